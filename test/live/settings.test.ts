import { describe, expect, it } from 'vitest';
import { settingsFor } from '../../lib/live/case/settings.js';
import { onePart, quantity } from '../../lib/page/index.js';
import type { Parts } from '../../lib/parts/index.js';
import { parts } from '../page/sample-page.js';

const words = { label: 'Label', help: 'Help.' };
const length = {
  ...words,
  dimension: 'length',
  unit: 'mm',
  default: 0.03,
  min: 0,
  max: 1,
  step: 0.01,
} as const;
const declaration = {
  drillOff: quantity({ ...length, inFile: ({ tolerances }) => tolerances?.holeDiameter }),
  chamfer: quantity(length),
  oil: onePart({ ...words, list: 'oils' }),
};

describe('settings for another parts file', () => {
  const said = { ...parts, tolerances: { holeDiameter: 5e-5 } };
  const follow = (settings: Readonly<Record<string, string>>, before: Parts = said) =>
    settingsFor(parts, declaration, { settings, before });

  it('leave a number open that was as the file before said, and keep one that was changed', () => {
    expect(follow({ 'drill-off': '0.05 mm', chamfer: '0.05 mm' })).toEqual({ chamfer: '0.05 mm' });
    expect(follow({ 'drill-off': '0.06 mm' })).toEqual({ 'drill-off': '0.06 mm' });
  });

  it('leave a number open that nobody changed where the file before said nothing', () => {
    expect(follow({ 'drill-off': '0.03 mm', chamfer: '0.03 mm' }, parts)).toEqual({ chamfer: '0.03 mm' });
  });

  it('leave a part open that the file does not have', () => {
    const [oil] = parts.oils;
    expect(follow({ oil: oil?.name ?? '' })).toEqual({ oil: [oil?.name] });
    expect(follow({ oil: 'an oil of the file before' })).toEqual({});
  });
});
