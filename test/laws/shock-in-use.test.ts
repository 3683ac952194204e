import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { cavitationOnset } from '../../lib/damper/cavitation-onset.js';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { forcesAlongTravel } from '../../lib/damper/force-after-travel.js';
import { playOfPiston } from '../../lib/damper/play-of-piston.js';
import { anyOilInUse, anyPlaceInStroke, anyShockInUse, anySpeedInUse } from './shock-in-use.js';

describe('shocks as they are built', () => {
  test('meet cavities, whole oil and both ends of the stroke', () => {
    const met = { cavity: 0, whole: 0, start: 0, end: 0 };
    fc.assert(
      fc.property(
        anyShockInUse,
        anyOilInUse,
        anySpeedInUse,
        anyPlaceInStroke,
        (damper, oil, speed, place) => {
          const point = damperForce(damperModel(damper, oil), { speed, position: place * damper.stroke });
          if (point.cavitating) met.cavity++;
          else met.whole++;
          if (place === 0) met.start++;
          if (place === 1) met.end++;
        },
      ),
    );
    // Of 200 or more, so that each is met many times whatever the seed.
    for (const count of Object.values(met)) expect(count).toBeGreaterThan(10);
  });

  test('a force is finite, the sum of its parts, and never helps the motion on', () =>
    fc.assert(
      fc.property(
        anyShockInUse,
        anyOilInUse,
        anySpeedInUse,
        anyPlaceInStroke,
        (damper, oil, speed, place) => {
          const point = damperForce(damperModel(damper, oil), { speed, position: place * damper.stroke });
          const { force, dampingForce, gasForce, sealForce } = point;
          expect(Number.isFinite(force)).toBe(true);
          expect(Math.abs(dampingForce + gasForce + sealForce - force)).toBeLessThan(
            1e-9 * Math.abs(force) + 1e-9,
          );
          expect(dampingForce * speed).toBeGreaterThan(0);
        },
      ),
    ));

  test('it cavitates beyond the onset and nowhere else', () =>
    fc.assert(
      fc.property(
        anyShockInUse,
        anyOilInUse,
        anySpeedInUse,
        anyPlaceInStroke,
        (damper, oil, speed, place) => {
          const model = damperModel(damper, oil);
          const position = place * damper.stroke;
          const onset = cavitationOnset(model, speed > 0 ? 'compression' : 'rebound', position);
          fc.pre(onset === undefined || Math.abs(speed / onset.speed - 1) > 1e-6);
          const { cavitating, lowestPressure } = damperForce(model, { speed, position });
          expect(cavitating).toBe(onset !== undefined && Math.abs(speed) > Math.abs(onset.speed));
          expect(lowestPressure).toBeGreaterThanOrEqual(0);
        },
      ),
    ));

  test('along a stroke from end to end forces are finite, and where no cavity has opened the force is that of whole oil', () =>
    fc.assert(
      fc.property(anyShockInUse, anyOilInUse, anySpeedInUse, (damper, oil, speed) => {
        const model = damperModel(damper, oil);
        const start = { speed, position: speed > 0 ? 0 : damper.stroke };
        const travels = [0.25, 0.5, 0.75, 1].map((part) => part * damper.stroke);
        const points = forcesAlongTravel(model, start, travels);
        points.forEach((point, index) => {
          const position = start.position + Math.sign(speed) * (travels[index] ?? 0);
          // Beyond a tenth of a micrometre of rounding the way ends at the end of the stroke.
          const whole = damperForce(model, {
            speed,
            position: Math.min(damper.stroke, Math.max(0, position)),
          });
          expect(point.cavityVolume).toBeGreaterThanOrEqual(0);
          expect(point.dampingForce * speed).toBeGreaterThan(0);
          expect(Number.isFinite(point.force)).toBe(true);
          if (!whole.cavitating && point.cavityVolume === 0) {
            expect(Math.abs(point.force - whole.force)).toBeLessThan(1e-6 * Math.abs(whole.force) + 1e-6);
          }
        });
      }),
      { numRuns: 60 },
    ));

  test('sitting aside or askew by its play, a piston resists a little more or less, not otherwise', () =>
    fc.assert(
      fc.property(anyShockInUse, anyOilInUse, anySpeedInUse, (damper, oil, speed) => {
        const model = damperModel(damper, oil);
        const { more, less } = playOfPiston(model, speed);
        expect(more).toBeGreaterThanOrEqual(0);
        expect(less).toBeLessThanOrEqual(0);
        expect(less).toBeGreaterThan(-0.6);
      }),
    ));
});
