import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { requireCompensator } from '../../lib/gas/compensator.js';
import { type Gas, requireGas, sealedGas } from '../../lib/gas/gas.js';
import { type GasRoom, volumeGivenUp } from '../../lib/gas/gas-room.js';
import { displacedVolumeAt, gasPressure, gasState } from '../../lib/gas/gas-state.js';
import { HydraulicLock } from '../../lib/gas/hydraulic-lock.js';
import { pocketExponent, polytropicExponent } from '../../lib/gas/polytropic-exponent.js';
import { standingGas } from '../../lib/gas/standing-gas.js';

const atmosphere = 101_325;
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const gasOf = (rooms: readonly GasRoom[], change: Partial<Gas['closing']> = {}): Gas => ({
  ...sealedGas({ volume: 1e-6 }),
  rooms,
  closing: { displacedVolume: 0, pressure: atmosphere, temperature: 293.15, oilVolume: 0, ...change },
});
const pocket = { volume: 1e-6, stiffness: 0, vented: false };
const bladder = { volume: 1e-6, stiffness: 15e9, vented: false };
const ventedBladder = { volume: 0.5e-6, stiffness: 15e9, vented: true };

const anyRoom: fc.Arbitrary<GasRoom> = fc.oneof(
  within(1e-7, 3e-6).map((volume) => ({ volume, stiffness: 0, vented: false })),
  fc.record({ volume: within(1e-7, 3e-6), stiffness: within(1e8, 1e11), vented: fc.constant(false) }),
  fc.record({ volume: within(1e-7, 3e-6), stiffness: within(1e8, 1e11), vented: fc.constant(true) }),
);
const anyGas = fc.record({
  rooms: fc.array(anyRoom, { minLength: 1, maxLength: 2 }),
  displacedVolume: within(0, 2e-7),
  temperature: within(260, 330),
  oilExpansion: within(0.97, 1.03),
  exponent: within(1, 1.4),
});

test('a vented bladder gives up its volume and no more, however hard it is pressed', () => {
  // 15 GPa/m³: 0.5 ml take 7500 Pa.
  const room = {
    ...ventedBladder,
    volume: 0.5e-6,
    logGasPressure: 0,
    gasPressure: atmosphere,
    wallPressure: 0,
  };
  const givenUp = (excess: number) => volumeGivenUp(room, Math.log1p(excess / atmosphere), atmosphere, 1.4);
  expect(givenUp(3000) / 0.2e-6).toBeCloseTo(1, 9);
  expect(givenUp(7499) / 0.5e-6).toBeCloseTo(7499 / 7500, 9);
  for (const excess of [8000, 1e5, 1e7]) expect(givenUp(excess)).toBe(0.5e-6);
});

describe('pressure of the gas', () => {
  test('half the volume doubles it slowly and raises it 2^1.4 fast (Boyle; Poisson)', () => {
    const gas = gasOf([{ ...pocket, volume: 2e-6 }]);
    expect(gasPressure(gasState(gas, { polytropicExponent: 1 }), 1e-6) / atmosphere).toBeCloseTo(2, 12);
    expect(gasPressure(gasState(gas, { polytropicExponent: 1.4 }), 1e-6) / atmosphere).toBeCloseTo(
      2 ** 1.4,
      12,
    );
  });

  test('goes with the absolute temperature (Gay-Lussac), and oil that grows takes room as the shaft does', () => {
    const gas = gasOf([pocket], { oilVolume: 4e-6 });
    expect(gasPressure(gasState(gas, { temperature: 1.1 * 293.15 }), 0) / atmosphere).toBeCloseTo(1.1, 12);
    const grown = gasState(gas, { oilExpansion: 1.05, polytropicExponent: 1 });
    // 4 ml grow by 0.2 ml.
    expect(gasPressure(grown, 0) / atmosphere).toBeCloseTo(1 / 0.8, 12);
    expect(grown.capacity).toBeCloseTo(0.8e-6, 18);
  });

  test('closed with the shaft half in, it is below the pressure outside with the shaft out', () => {
    const gas = gasState(gasOf([pocket], { displacedVolume: 1e-7 }), { polytropicExponent: 1 });
    expect(gasPressure(gas, 1e-7)).toBe(atmosphere);
    expect(gasPressure(gas, 0) / atmosphere).toBeCloseTo(1 / 1.1, 12);
  });

  test('walls add their stiffness: 0.1 ml into a bladder of 15 kPa/ml add 1.5 kPa', () => {
    const [free, held] = [pocket, bladder].map((room) =>
      gasPressure(gasState(gasOf([room]), { polytropicExponent: 1 }), 1e-7),
    ) as [number, number];
    expect(held - free).toBeCloseTo(1500, 6);
  });

  test('a vented bladder holds the pressure outside but for its rubber, whatever the temperature, until it is full', () => {
    const gas = gasState(gasOf([ventedBladder]), { temperature: 330 });
    expect(gasPressure(gas, 1e-7)).toBeCloseTo(atmosphere + 1500, 6);
    expect(gas.capacity).toBeCloseTo(0.5e-6, 18);
    expect(() => gasPressure(gas, 0.5e-6)).toThrow('where no gas is left and the shaft locks');
  });

  test('rooms side by side share one pressure, and their volumes add up', () => {
    const two = gasState(gasOf([pocket, { ...pocket, volume: 0.5e-6 }]), { polytropicExponent: 1.2 });
    const one = gasState(gasOf([{ ...pocket, volume: 1.5e-6 }]), { polytropicExponent: 1.2 });
    expect(gasPressure(two, 4e-7) / gasPressure(one, 4e-7)).toBeCloseTo(1, 12);
  });

  test('nothing that gives way: no pressure further out, a lock further in', () => {
    const gas = gasState(gasOf([], { displacedVolume: 1e-7 }));
    expect(gasPressure(gas, 0.5e-7)).toBe(0);
    expect(gasPressure(gas, 1e-7)).toBe(atmosphere);
    expect(() => gasPressure(gas, 1.1e-7)).toThrow('the shaft locks');
  });

  test('rises with the volume taken, and the volume at a pressure is its inverse', () =>
    fc.assert(
      fc.property(anyGas, within(0.02, 0.95), ({ rooms, exponent, ...change }, share) => {
        const gas = gasOf(rooms, { displacedVolume: change.displacedVolume, oilVolume: 1e-6 });
        const state = gasState(gas, { ...change, polytropicExponent: exponent });
        const displaced = state.restDisplacement + share * (state.capacity - state.restDisplacement);
        const pressure = gasPressure(state, displaced);
        const more = gasPressure(state, displaced + 1e-3 * (state.capacity - displaced));
        expect(more).toBeGreaterThan(pressure);
        // A vented room that is full leaves the rest to the others.
        const back = displacedVolumeAt(state, pressure);
        expect(Math.abs(back - displaced)).toBeLessThan(1e-9 * state.capacity + 1e-16);
      }),
    ));

  test('is lock-free below the capacity and refuses it', () =>
    fc.assert(
      fc.property(anyGas, ({ rooms, exponent, ...change }) => {
        const state = gasState(gasOf(rooms), { ...change, polytropicExponent: exponent });
        expect(Number.isFinite(gasPressure(state, state.capacity * (1 - 1e-9)))).toBe(true);
        expect(() => gasPressure(state, state.capacity)).toThrow('displacedVolume must be below');
      }),
    ));
});

describe('a shock that has stood', () => {
  test('without dissolved air stands as the slow gas does', () =>
    fc.assert(
      fc.property(
        fc.constantFrom(pocket, bladder, ventedBladder),
        within(-1e-7, 4e-7),
        (room, displacedVolume) => {
          const gas = gasOf([room]);
          const slow = gasPressure(gasState(gas, { polytropicExponent: 1 }), displacedVolume);
          const stood = standingGas(gas, { displacedVolume, polytropicExponent: 1.4 });
          expect(gasPressure(stood, displacedVolume) / slow).toBeCloseTo(1, 9);
        },
      ),
    ));

  test('air comes out of the oil where the pressure fell: p (V + D) stays (Henry and Boyle)', () => {
    // Closed with the shaft 0.2 ml in, with no free air and 0.6 ml dissolved; left standing fully out.
    const gas = gasOf([{ volume: 0, stiffness: 0, vented: false, dissolvedAir: 0.6e-6 }], {
      displacedVolume: 2e-7,
    });
    requireGas(gas);
    const stood = standingGas(gas, { displacedVolume: 0 });
    expect(gasPressure(stood, 0) / atmosphere).toBeCloseTo(0.6 / 0.8, 9);
    // That air is free now, and a stroke squeezes it alone.
    expect(stood.capacity).toBeCloseTo(2e-7, 15);
    expect(gasPressure(gasState(gas), 0)).toBe(0);
  });

  test('free air dissolves where the pressure rose, and no more than there is', () => {
    const air = { volume: 1e-7, stiffness: 0, vented: false, dissolvedAir: 0.6e-6 };
    const gas = gasOf([pocket, air]);
    const stood = standingGas(gas, { displacedVolume: 2e-7 });
    const held = gasOf([{ ...pocket, volume: 1.7e-6 }]);
    // As long as both are left, the dissolved air counts as gas.
    expect(
      gasPressure(stood, 2e-7) / gasPressure(gasState(held, { polytropicExponent: 1 }), 2e-7),
    ).toBeCloseTo(1, 9);
    const deep = standingGas(gas, { displacedVolume: 9e-7 });
    expect(deep.rooms).toHaveLength(1);
    // All 0.1 ml of free air gone, the pocket is left with 1 − 0.8 ml.
    expect(gasPressure(deep, 9e-7) / atmosphere).toBeCloseTo(1 / 0.2, 9);
  });
});

describe('exponent of a stroke', () => {
  test('lies between slow and fast, and larger pockets and quicker strokes are nearer to fast', () => {
    const small = pocketExponent(1e-9);
    const usual = pocketExponent(1e-6);
    expect(small).toBeGreaterThan(1);
    expect(usual).toBeGreaterThan(small);
    expect(usual).toBeLessThan(1.4);
    expect(pocketExponent(1e-6, 20)).toBeGreaterThan(usual);
    // A pocket of 1 ml is a bubble of 6.204 mm.
    expect(pocketExponent(1e-6, 4) / polytropicExponent(6.2035e-3, 4)).toBeCloseTo(1, 5);
  });
});

describe('bad gas', () => {
  test.each([
    [[{ ...pocket, volume: 0 }], 'gas.rooms[0].volume must be greater than 0 m³, got 0 m³'],
    [[pocket, { ...ventedBladder, stiffness: 0 }], 'gas.rooms[1].stiffness must be greater than 0 Pa/m³'],
    [[{ ...pocket, dissolvedAir: -1 }], 'gas.rooms[0].dissolvedAir must be 0 or more m³, got -1 m³'],
    [
      [{ ...bladder, stiffness: Number.NaN }],
      'gas.rooms[0].stiffness must be 0 or more Pa/m³, got NaN Pa/m³',
    ],
  ])('%#', (rooms, message) => {
    expect(() => requireGas(gasOf(rooms))).toThrow(message);
  });

  test.each([
    [{ displacedVolume: -1 }, 'gas.closing.displacedVolume must be 0 or more m³'],
    [{ temperature: 0 }, 'gas.closing.temperature must be greater than 0 K'],
    [{ oilVolume: -1 }, 'gas.closing.oilVolume must be 0 or more m³'],
    [{ oilDensity: 0 }, 'gas.closing.oilDensity must be greater than 0 kg/m³'],
  ])('%o', (closing, message) => {
    expect(() => requireGas(gasOf([pocket], closing))).toThrow(message);
  });

  test('a pocket of no size, a condition out of range', () => {
    expect(() => sealedGas({ volume: 0 })).toThrow('volume must be greater than 0 m³');
    expect(() => gasState(gasOf([pocket]), { temperature: -1 })).toThrow(
      'temperature must be greater than 0 K',
    );
    expect(() => gasState(gasOf([pocket]), { polytropicExponent: 1.5 })).toThrow(
      'polytropicExponent must be 1 to 1.4, got 1.5',
    );
  });
});

test('what a stretched bladder holds of the pressure does not press it together', () => {
  // By hand: of 103 kPa the air outside holds 100 and the stretched rubber 2; the last 1000 Pa at 10 GPa/m³ take 0.1 ml.
  const room = { ...ventedBladder, stiffness: 1e10, logGasPressure: 0, gasPressure: 1e5, wallPressure: 2e3 };
  expect(volumeGivenUp(room, Math.log(103 / 102), 102e3, 1.4) / 0.1e-6).toBeCloseTo(1, 9);
});

test('only a vented bladder must have stiff walls: air that is shut in is stiff itself', () => {
  const slack = { kind: 'bladder', volume: 1e-6, stiffness: 0 } as const;
  expect(() => requireCompensator({ ...slack, vented: false })).not.toThrow();
  expect(() => requireCompensator({ ...slack, vented: true })).toThrow(
    'compensator.stiffness must be greater than 0 Pa/m³',
  );
});

test('a lock says where it is, and that the shaft must stay below', () => {
  expect(new HydraulicLock(0.02, 0.0185).message).toBe(
    'position must be below the hydraulic lock at 0.0185 m, got 0.02 m',
  );
});
