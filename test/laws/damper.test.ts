import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Damper } from '../../lib/damper/damper.js';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { creepingDampingCoefficient } from '../../lib/damper/force-point.js';
import { packSpeed } from '../../lib/damper/pack-speed.js';
import { sealFrictionForce } from '../../lib/damper/seal-friction.js';
import { anyDamper, anyFluid, anySpeed, atPressure } from './arbitraries.js';

const ratioError = (value: number, expected: number) => Math.abs(value / expected - 1);

/** The same damper under so much gas that no cavity opens: what follows is then true at any speed, both ways. */
const pressed = (damper: Damper): Damper => atPressure(damper, 1e12);

describe('damper', () => {
  test('power F v of the damping is never negative', () =>
    fc.assert(
      fc.property(anyDamper, anyFluid, anySpeed, fc.boolean(), (damper, fluid, size, rebound) => {
        const speed = rebound ? -size : size;
        const point = damperForce(damperModel(damper, fluid), { speed, position: 0 });
        expect(point.dampingForce * speed).toBeGreaterThan(0);
        expect(point.sealForce * speed).toBeGreaterThanOrEqual(0);
      }),
    ));

  test('power closes: F v is what the oil loses in holes, gap and rim, less what the jets give back', () =>
    fc.assert(
      fc.property(anyDamper, anyFluid, anySpeed, (damper, fluid, speed) => {
        const model = damperModel(pressed(damper), fluid);
        const { dampingForce, pressureDrop, jetRecoil } = damperForce(model, { speed, position: 0 });
        const lost =
          model.pistonFlow.flow(pressureDrop) * pressureDrop + model.rimDrag * speed ** 2 - jetRecoil * speed;
        expect(ratioError(lost, dampingForce * speed)).toBeLessThan(1e-9);
      }),
    ));

  test('damping is odd in speed and rises with it', () =>
    fc.assert(
      fc.property(anyDamper, anyFluid, anySpeed, (damper, fluid, speed) => {
        const model = damperModel(pressed(damper), fluid);
        const at = (v: number) => damperForce(model, { speed: v, position: 0 }).dampingForce;
        expect(at(-speed)).toBe(-at(speed));
        expect(at(1.01 * speed)).toBeGreaterThan(at(speed));
      }),
    ));

  test('force is the sum of damping, gas and seals', () =>
    fc.assert(
      fc.property(anyDamper, anyFluid, anySpeed, (damper, fluid, speed) => {
        const point = damperForce(damperModel(damper, fluid), { speed, position: 0 });
        const sum = point.dampingForce + point.gasForce + point.sealForce;
        expect(point.force).toBeCloseTo(sum, 9);
        expect(ratioError(point.dampingCoefficient * speed, point.dampingForce)).toBeLessThan(1e-12);
      }),
    ));

  test('scaling all lengths and the viscosity scales every force alike', () =>
    fc.assert(
      fc.property(
        anyDamper,
        anyFluid,
        anySpeed,
        fc.double({ min: 0.2, max: 5, noNaN: true }),
        (damper, fluid, speed, scale) => {
          // Same Reynolds number at the same speed: pressure stays, so force goes with the area.
          const scaled: Damper = {
            ...pressed(damper),
            gas: {
              ...pressed(damper).gas,
              rooms: damper.gas.rooms.map((room) => ({ ...room, volume: scale ** 2 * room.volume })),
            },
            bore: scale * damper.bore,
            shaftDiameter: scale * damper.shaftDiameter,
            piston: {
              ...damper.piston,
              diameter: scale * damper.piston.diameter,
              thickness: scale * damper.piston.thickness,
              holes: damper.piston.holes.map((group) => ({ ...group, diameter: scale * group.diameter })),
            },
          };
          const thicker = { ...fluid, kinematicViscosity: scale * fluid.kinematicViscosity };
          const small = damperForce(damperModel(pressed(damper), fluid), { speed, position: 0 });
          const large = damperForce(damperModel(scaled, thicker), { speed, position: 0 });
          expect(ratioError(large.dampingForce / small.dampingForce, scale ** 2)).toBeLessThan(1e-8);
          expect(ratioError(large.holeReynoldsNumber, small.holeReynoldsNumber)).toBeLessThan(1e-8);
          expect(ratioError(large.wallShearRate * scale, small.wallShearRate)).toBeLessThan(1e-8);
        },
      ),
    ));

  test('the coefficient at rest is the limit of slow motion', () =>
    fc.assert(
      fc.property(anyDamper, anyFluid, (damper, fluid) => {
        const model = damperModel(damper, fluid);
        const slow = damperForce(model, { speed: 1e-9, position: 0 }).dampingCoefficient;
        expect(ratioError(slow, creepingDampingCoefficient(model))).toBeLessThan(1e-4);
        expect(damperForce(model, { speed: 0, position: 0 }).dampingCoefficient).toBe(
          creepingDampingCoefficient(model),
        );
      }),
    ));

  test('the leak share lies between 0 and 1, and at rest is the limit of slow motion', () =>
    fc.assert(
      fc.property(anyDamper, anyFluid, anySpeed, (damper, fluid, speed) => {
        const model = damperModel(damper, fluid);
        const { leakShare } = damperForce(model, { speed, position: 0 });
        expect(leakShare).toBeGreaterThan(0);
        expect(leakShare).toBeLessThan(1);
        const atRest = damperForce(model, { speed: 0, position: 0 }).leakShare;
        expect(ratioError(damperForce(model, { speed: 1e-9, position: 0 }).leakShare, atRest)).toBeLessThan(
          1e-4,
        );
      }),
    ));

  test('at the pack speed the damping coefficient of the pressure drop has doubled', () =>
    fc.assert(
      fc.property(anyDamper, anyFluid, (damper, fluid) => {
        const model = damperModel(pressed(damper), fluid);
        const speed = packSpeed(model);
        fc.pre(speed !== undefined);
        const coefficient = (v: number) => damperForce(model, { speed: v, position: 0 }).pressureDrop / v;
        expect(ratioError(coefficient(speed ?? 0), 2 * coefficient(1e-9))).toBeLessThan(1e-4);
      }),
    ));
});

describe('gas in a damper', () => {
  test('compression feels the gas, and only the pressure above the air outside counts', () =>
    fc.assert(
      fc.property(anyDamper, anyFluid, (damper, fluid) => {
        const model = damperModel({ ...damper, seal: { kineticForce: 0, breakawayForce: 0 } }, fluid);
        const room = (0.9 * model.gas.capacity) / model.shaftArea;
        const position = Math.min(damper.stroke, room);
        const rest = damperForce(model, { speed: 0, position: 0 });
        const expected = model.shaftArea * (damper.gas.closing.pressure - damper.gas.ambientPressure);
        expect(rest.force).toBeCloseTo(expected, 9);
        expect(damperForce(model, { speed: 0, position }).force).toBeGreaterThan(rest.force);
      }),
    ));
});

describe('seal friction', () => {
  const seal = { kineticForce: 0.8, breakawayForce: 1.2 };

  test('opposes motion, is odd, and tends to the moving friction', () => {
    expect(sealFrictionForce(seal, 0)).toBe(0);
    expect(sealFrictionForce(seal, -0.02)).toBe(-sealFrictionForce(seal, 0.02));
    expect(sealFrictionForce(seal, 1)).toBeCloseTo(0.8, 12);
  });

  test('rises towards breakaway at a few millimetres a second', () => {
    // (0.8 + 0.4 exp(−0.16)) tanh 4, by hand.
    expect(sealFrictionForce(seal, 0.004)).toBeCloseTo(1.140858 * 0.9993293, 5);
  });
});
