import fc from 'fast-check';
import { expect, it } from 'vitest';
import { damperModel } from '../../lib/damper/damper-model.js';
import { chamberVolume } from '../../lib/fill/chamber/chamber.js';
import { chamberContents, lockPosition, pressureInside } from '../../lib/fill/chamber/pressure-inside.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { gasPressure } from '../../lib/gas/gas-state.js';
import { assembleShock, readParts } from '../../lib/parts/index.js';
import { anyFile } from './any-file.js';

it('every build of any accepted file has one gas, and its parts fill its body', () => {
  const place = fc.double({ min: 0, max: 1, noNaN: true });
  const warmth = fc.double({ min: 268, max: 328, noNaN: true });
  fc.assert(
    fc.property(anyFile, place, warmth, (file, part, temperature) => {
      for (const build of readParts(JSON.stringify(file)).builds) {
        const { damper, closed, assumptions } = assembleShock(build);
        const oil = createOil(build.oil.definition);
        const fluid = fluidAt(oil, temperature);
        const model = damperModel(damper, fluid);
        expect(assumptions.join(' ')).not.toMatch(/NaN|undefined|Infinity/u);
        expect(closed.oilVolume).toBeGreaterThan(0);
        const position = part * damper.stroke;
        const condition = {
          temperature,
          oilExpansion: fluidAt(oil, closed.closing.temperature).density / fluid.density,
          polytropicExponent: closed.gas.polytropicExponent,
        };
        if (lockPosition(closed, condition) <= position) continue;
        const filled = pressureInside(closed, position, condition);
        const seen = gasPressure(model.gas, model.shaftArea * position);
        expect(Math.abs(seen - filled)).toBeLessThanOrEqual(1e-9 * (filled + 1));
        const { oil: oilNow, gas, shaft, solid } = chamberContents(closed, position, condition);
        const whole = chamberVolume(closed.chamber);
        expect(Math.abs(oilNow + gas + shaft + solid - whole)).toBeLessThanOrEqual(1e-12 * whole);
      }
    }),
    { numRuns: 200 },
  );
});
