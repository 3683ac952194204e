import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chamberVolume, type ShockChamber } from '../../lib/fill/chamber/chamber.js';
import { type ClosedShock, closeShock } from '../../lib/fill/chamber/closed-shock.js';
import { closingPositionForForce, quietClosing } from '../../lib/fill/chamber/closing-position.js';
import {
  chamberContents,
  conditionAtClosing,
  type FillCondition,
  lockPosition,
  pressureInside,
} from '../../lib/fill/chamber/pressure-inside.js';
import { positionAtForce, staticForce } from '../../lib/fill/chamber/static-force.js';
import type { Compensator } from '../../lib/gas/compensator.js';
import { HydraulicLock } from '../../lib/gas/hydraulic-lock.js';

const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const anyChamber: fc.Arbitrary<ShockChamber> = fc
  .record({
    bore: within(8e-3, 20e-3),
    shaftDiameter: within(2e-3, 5e-3),
    stroke: within(10e-3, 40e-3),
    spare: within(3e-3, 20e-3),
    capVolume: within(0, 1e-6),
    solidVolume: within(0, 0.1e-6),
    shaftInside: within(0, 6e-3),
  })
  .map(({ spare, ...rest }) => ({ ...rest, length: rest.stroke + rest.shaftInside + spare }));

const anyCompensator: fc.Arbitrary<Compensator> = fc.oneof(
  fc.record({ kind: fc.constant('air-pocket' as const), volume: within(1e-8, 3e-7) }),
  fc.record({
    kind: fc.constant('bladder' as const),
    volume: within(1e-8, 3e-7),
    stiffness: within(1e9, 1e12),
    vented: fc.boolean(),
  }),
  fc.record({
    kind: fc.constant('foam' as const),
    volume: within(1e-8, 3e-7),
    gasFraction: within(0.5, 0.97),
    stiffness: within(0, 1e12),
  }),
  fc.record({ kind: fc.constant('emulsion' as const), gasFraction: within(0.01, 0.2) }),
  fc.constant({ kind: 'none' as const }),
);

/** Any closed shock with a place in its stroke and a condition; the place may be past the lock. */
const anyCase = fc
  .record({
    chamber: anyChamber,
    compensator: anyCompensator,
    closeAt: within(0, 1),
    at: within(0, 1),
    temperature: within(265, 320),
    ambientPressure: within(0.7e5, 1.1e5),
    freeAir: fc.oneof(fc.constant(0), within(1e-10, 5e-8)),
    polytropicExponent: within(1, 1.4),
    warmer: within(-30, 40),
  })
  .map((c) => {
    const { temperature, ambientPressure, freeAir } = c;
    const position = c.closeAt * c.chamber.stroke;
    const shock = closeShock(c.chamber, c.compensator, { position, temperature, ambientPressure, freeAir });
    const condition: FillCondition = {
      polytropicExponent: c.polytropicExponent,
      temperature: temperature + c.warmer,
      oilExpansion: Math.exp(9.1e-4 * c.warmer),
    };
    return { shock, condition, position: c.at * c.chamber.stroke };
  });

const locked = (shock: ClosedShock, condition: FillCondition, position: number): boolean => {
  try {
    pressureInside(shock, position, condition);
    return false;
  } catch (error) {
    expect(error).toBeInstanceOf(HydraulicLock);
    return true;
  }
};

describe('fill', () => {
  test('volume is conserved to 1e-12 of the chamber in every position, at every temperature', () =>
    fc.assert(
      fc.property(anyCase, ({ shock, condition, position }) => {
        fc.pre(position < lockPosition(shock, condition));
        const { oil, gas, shaft, solid } = chamberContents(shock, position, condition);
        const whole = chamberVolume(shock.chamber);
        expect(Math.abs(oil + gas + shaft + solid - whole)).toBeLessThanOrEqual(1e-12 * whole);
        for (const part of [oil, gas, shaft, solid]) expect(part).toBeGreaterThanOrEqual(-1e-12 * whole);
      }),
    ));

  test('hydraulic lock is found, never stepped over: locked past the lock position, free before it', () =>
    fc.assert(
      fc.property(anyCase, ({ shock, condition, position }) => {
        const lock = lockPosition(shock, condition);
        // On the last bit of the lock either answer is right.
        fc.pre(Math.abs(position - lock) > 1e-12);
        expect(locked(shock, condition, position)).toBe(position > lock);
      }),
    ));

  test('just before the lock the force is already huge, unless a vented bladder gives no warning', () =>
    fc.assert(
      fc.property(anyCase, ({ shock }) => {
        const lock = lockPosition(shock);
        fc.pre(shock.gas.rooms.length > 0 && shock.gas.rooms.every(({ vented }) => !vented));
        fc.pre(lock < shock.chamber.stroke);
        const near = shock.closing.position + 0.999 * (lock - shock.closing.position);
        expect(pressureInside(shock, near)).toBeGreaterThan(900 * shock.closing.ambientPressure);
      }),
    ));

  test('pressure rises with the position', () =>
    fc.assert(
      fc.property(anyCase, ({ shock, condition, position }) => {
        fc.pre(shock.gas.rooms.length > 0);
        const next = position + 1e-3 * shock.chamber.stroke;
        fc.pre(next < Math.min(lockPosition(shock, condition), shock.chamber.stroke));
        // An empty space has no pressure to rise from.
        fc.pre(pressureInside(shock, next, condition) > 0);
        expect(pressureInside(shock, next, condition)).toBeGreaterThan(
          pressureInside(shock, position, condition),
        );
      }),
    ));

  test('as closed there is no force at the position of closing', () =>
    fc.assert(
      fc.property(anyCase, ({ shock }) => {
        expect(staticForce(shock, shock.closing.position)).toBe(0);
      }),
    ));

  test('energy stored in the gas over a slow stroke is returned, and is p₀V₀ ln(V₀/V) of the textbook', () =>
    fc.assert(
      fc.property(anyChamber, within(2e-7, 1e-6), (chamber, extra) => {
        // An air pocket larger than what the shaft takes.
        const swept = (Math.PI / 4) * chamber.shaftDiameter ** 2 * chamber.stroke;
        const roomy = { ...chamber, capVolume: swept + 2 * extra };
        const volume = swept + extra;
        const closing = { position: 0, temperature: 293.15, ambientPressure: 1e5, freeAir: 0 };
        const shock = closeShock(roomy, { kind: 'air-pocket', volume }, closing);
        const work = (from: number, to: number): number => {
          const steps = 400;
          let sum = 0;
          for (let i = 0; i <= steps; i++) {
            const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
            // The stroke itself, not its last bit beyond.
            const position = Math.min(Math.max(from + ((to - from) * i) / steps, 0), chamber.stroke);
            sum += weight * staticForce(shock, position);
          }
          return (sum * (to - from)) / (3 * steps);
        };
        const [stored, returned] = [work(0, chamber.stroke), work(chamber.stroke, 0)];
        const textbook = 1e5 * (volume * Math.log(volume / (volume - swept)) - swept);
        expect(Math.abs(stored + returned)).toBeLessThan(1e-9 * stored);
        expect(Math.abs(stored / textbook - 1)).toBeLessThan(1e-5);
      }),
      { numRuns: 40 },
    ));

  test('position and force are inverse to each other', () =>
    fc.assert(
      fc.property(anyCase, ({ shock, condition, position }) => {
        fc.pre(shock.gas.rooms.length > 0 && position < lockPosition(shock, condition) - 1e-6);
        const force = staticForce(shock, position, condition);
        // An empty space has one force for many positions; where the gas is all but gone the force has no digits left for the position.
        fc.pre(pressureInside(shock, position, condition) > 0);
        fc.pre(force < 1e3 * shock.shaftArea * shock.closing.ambientPressure);
        const back = positionAtForce(shock, force, condition) ?? Number.NaN;
        expect(Math.abs(back - position)).toBeLessThan(1e-9 * shock.chamber.stroke);
      }),
    ));

  test('a shock closed for a wanted force has it', () =>
    fc.assert(
      fc.property(anyCase, within(0, 1), ({ shock, position }, closeAt) => {
        fc.pre(shock.gas.rooms.length > 0);
        const { chamber, compensator, closing } = shock;
        const closed = (at: number) => closeShock(chamber, compensator, { ...closing, position: at });
        const model = closed(closeAt * chamber.stroke);
        fc.pre(position < lockPosition(model) - 1e-6 && pressureInside(model, position) > 0);
        const force = staticForce(model, position);
        fc.pre(Math.abs(force) < 1e2 * shock.shaftArea * closing.ambientPressure);
        const found = closingPositionForForce(chamber, compensator, closing, { force, position });
        const scale = shock.shaftArea * closing.ambientPressure;
        expect(Math.abs(staticForce(closed(found), position) - force)).toBeLessThan(
          1e-6 * (scale + Math.abs(force)),
        );
      }),
    ));

  test('no other closing position is quieter over the working stroke', () =>
    fc.assert(
      fc.property(anyCase, within(0, 0.4), within(0.6, 1), within(0, 1), ({ shock }, a, b, other) => {
        fc.pre(shock.gas.rooms.length > 0);
        const { chamber, compensator, closing } = shock;
        const working = { from: a * chamber.stroke, to: b * chamber.stroke };
        const loudest = (at: number): number => {
          const closed = closeShock(chamber, compensator, { ...closing, position: at });
          if (lockPosition(closed) <= working.to) return Number.POSITIVE_INFINITY;
          return Math.max(staticForce(closed, working.to), -staticForce(closed, working.from));
        };
        const quiet = quietClosing(chamber, compensator, closing, working);
        expect(loudest(other * chamber.stroke)).toBeGreaterThanOrEqual(quiet.largestForce * (1 - 1e-9));
        expect(loudest(quiet.position)).toBeLessThanOrEqual(quiet.largestForce * (1 + 1e-6));
      }),
    ));

  test('as closed is the slow condition at the temperature of closing', () =>
    fc.assert(
      fc.property(anyCase, ({ shock, position }) => {
        fc.pre(position < lockPosition(shock));
        expect(pressureInside(shock, position)).toBe(
          pressureInside(shock, position, conditionAtClosing(shock)),
        );
      }),
    ));
});
