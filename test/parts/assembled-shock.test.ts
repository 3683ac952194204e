import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { damperModel } from '../../lib/damper/damper-model.js';
import { lockPosition, pressureInside } from '../../lib/fill/chamber/pressure-inside.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { gasPressure } from '../../lib/gas/gas-state.js';
import { assembleShock, type Build, readParts } from '../../lib/parts/index.js';
import { changed } from './small-file.js';

const inside = '    inside: { length: 34 mm, cap-volume: 0.5 ml, solid-volume: 0.3 ml }\n';
const none = '    oil-volume: 3.2 ml\n    compensator: { kind: air-pocket, volume: 0.9 ml }\n';

function buildOf(lines: string): Build {
  const [build] = readParts(changed(none, lines)).builds;
  if (build === undefined) throw new Error('the file has no build');
  return build;
}

const kinds = [
  'air-pocket, volume: 0.9 ml',
  'air-pocket, volume: 0.7 ml, side: shaft-side, exponent: 1.3',
  'bladder, volume: 0.8 ml, stiffness: 15 kPa/ml',
  'bladder, volume: 0.8 ml',
  'vented-bladder, volume: 0.6 ml, stiffness: 40 kPa/ml',
  'foam, volume: 1 ml, gas-fraction: 0.85, stiffness: 5 kPa/ml',
  'emulsion, gas-fraction: 0.12',
  'none',
];

describe('one gas', () => {
  it.each(kinds)('force and fill see one pressure at every position and temperature: %s', (kind) => {
    const build = buildOf(`${inside}    compensator: { kind: ${kind} }\n`);
    const { damper, closed } = assembleShock(build);
    expect(damper.gas).toBe(closed.gas);
    const oil = createOil(build.oil.definition);
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(part, fc.double({ min: 258, max: 333, noNaN: true }), (place, temperature) => {
        const fluid = fluidAt(oil, temperature);
        const model = damperModel(damper, fluid);
        const condition = {
          temperature,
          oilExpansion: fluidAt(oil, closed.closing.temperature).density / fluid.density,
          polytropicExponent: closed.gas.polytropicExponent,
        };
        const position = place * damper.stroke;
        if (lockPosition(closed, condition) <= position) return;
        const seen = gasPressure(model.gas, model.shaftArea * position);
        const filled = pressureInside(closed, position, condition);
        expect(Math.abs(seen - filled)).toBeLessThanOrEqual(1e-9 * (filled + 1));
      }),
    );
  });
});
