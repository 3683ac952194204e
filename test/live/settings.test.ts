import { describe, expect, it } from 'vitest';
import { choicesFor, choicesIn, fragmentOf, otherChoices } from '../../lib/live/case/choices.js';
import { onePart, quantity, severalParts } from '../../lib/page/index.js';
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
  chamfer: quantity(length),
  oil: onePart({ ...words, list: 'oils' }),
  oils: severalParts({ ...words, list: 'oils', atMost: 4 }),
};

describe('choices for another parts file', () => {
  const follow = (choices: Readonly<Record<string, string | readonly string[]>>) =>
    choicesFor(parts, [declaration], choices);

  it('keep a part that the file has, and leave one open that it does not have', () => {
    expect(follow({ oil: 'thin' })).toEqual({ oil: 'thin' });
    expect(follow({ oil: 'an oil of the file before' })).toEqual({});
    expect(follow({ oils: ['thin', 'gone'] })).toEqual({ oils: ['thin'] });
    expect(follow({ build: 'a build of the file before' })).toEqual({});
  });

  it('keep numbers, also such as no page of this document knows', () => {
    expect(follow({ chamfer: '0.05 mm', 'other-size': '2 mm' })).toEqual({
      chamfer: '0.05 mm',
      'other-size': '2 mm',
    });
  });
});

describe('the choices in an address', () => {
  it('are those of the page and the build, and come back as they were', () => {
    const choices = { build: 'rear', chamfer: '0.05 mm', oils: ['thin'], temperature: '12 °C' };
    const fragment = fragmentOf(declaration, choices);
    expect(choicesIn(fragment, declaration)).toEqual({ build: 'rear', chamfer: '0.05 mm', oils: ['thin'] });
    expect(otherChoices(declaration, choices)).toEqual({ temperature: '12 °C' });
  });
});
