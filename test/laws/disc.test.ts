import { describe, expect, test } from 'vitest';
import { tableDisc } from '../../lib/flow/disc/disc-table.js';
import { discFilm } from '../../lib/flow/disc/film.js';
import { bendByLoad, preparePlate } from '../../lib/flow/disc/plate.js';
import { discAtFlow } from '../../lib/flow/valve/disc-at-flow.js';
import { ringPlateCompliance } from '../../lib/flow/valve/ring-plate.js';

const shape = {
  holes: 4,
  clampRadius: 0.48,
  pitchRadius: 0.71,
  holeRadius: 0.12,
  thickness: 0.02,
  poissonRatio: 0.3,
  preload: 0,
};
const disc = {
  outerDiameter: 10.5e-3,
  clampDiameter: 5e-3,
  thickness: 1e-4,
  count: 1,
  elasticModulus: 3e9,
  poissonRatio: 0.35,
  preload: 0,
};
const holes = { count: 4, diameter: 1.3e-3, pitchDiameter: 7.5e-3 };

describe('a disc alone', () => {
  test('bends under a ring as the closed form of Timoshenko & Woinowsky-Krieger', () => {
    const prepared = preparePlate(shape);
    const bent = bendByLoad(prepared, prepared.ring, 1e-3);
    // Rigidity 1; the ring carries the pressure on its length.
    const plate = {
      innerRadius: 0.48,
      outerRadius: 1,
      thickness: 1,
      elasticModulus: 12 * 0.91,
      poissonRatio: 0.3,
    };
    const stiffer = (bent.pressure * 2 * Math.PI * 0.71 * ringPlateCompliance(plate, 0.71)) / 1e-3 - 1;
    // Four polynomials are never softer than the plate; the kink of the moment under a line is what they miss most.
    expect(stiffer).toBeGreaterThan(0);
    expect(stiffer).toBeLessThan(0.01);
  });

  // Coefficient of w D/(q a⁴) at the rim, from the separate program named in test/published/ring-plate.test.ts.
  test.each([
    [0.3, 0.0318182366],
    [0.5, 0.0085886361],
  ])('bends under even pressure, b/a %d', (clampRadius, expected) => {
    const prepared = preparePlate({ ...shape, clampRadius });
    const { modes, holeLoad } = prepared;
    const film = discFilm(prepared.shape, modes);
    const even = holeLoad.map((load, i) =>
      film.nodeLoads.slice(i * film.size, (i + 1) * film.size).reduce((sum, part) => sum + part, load),
    );
    const bent = bendByLoad(prepared, even, 1e-3);
    const rim = new Float64Array(modes.count);
    modes.write(1, 0.3, rim, 0);
    const sag = rim.reduce((sum, value, i) => sum + value * (bent.deflection[i] ?? 0), 0);
    expect(Math.abs(sag / bent.pressure / expected - 1)).toBeLessThan(2e-3);
  });

  test('stretches: twice the bending takes more than twice the load, the more the further', () => {
    const prepared = preparePlate(shape);
    const load = (deflection: number) =>
      bendByLoad(prepared, prepared.ring, deflection).pressure / deflection;
    const [small, one, two] = [load(0.01), load(1), load(2)];
    expect(one / small).toBeGreaterThan(1.02);
    // Stiffness grows with the square of the deflection.
    expect((two / small - 1) / (one / small - 1)).toBeGreaterThan(3);
    expect((two / small - 1) / (one / small - 1)).toBeLessThan(5);
  });
});

describe('a disc on its film', () => {
  test('without preload, ends and stretching: pressure goes with the lift, flow with its fourth power', () => {
    const { states } = tableDisc({ ...shape, thickness: 1e-4 }, 0.2);
    const [first, last] = [states[0], states.at(-1)];
    if (first === undefined || last === undefined) throw new Error('no balance');
    const ratio = last.lift / first.lift;
    expect(ratio).toBeGreaterThan(3);
    expect(Math.abs(last.pressure / first.pressure / ratio - 1)).toBeLessThan(0.02);
    expect(Math.abs(last.flow / first.flow / ratio ** 4 - 1)).toBeLessThan(0.03);
  });

  test('oil and modulus only scale: the lift goes with flow times viscosity over modulus', () => {
    const one = discAtFlow(disc, holes, 1e-6, 0.34);
    const other = discAtFlow({ ...disc, elasticModulus: 6e9 }, holes, 0.5e-6, 4 * 0.34);
    expect(other.lift / one.lift).toBeCloseTo(1, 9);
    expect(other.pressure / one.pressure).toBeCloseTo(2, 9);
    expect(other.load / one.load).toBeCloseTo(2, 9);
  });

  test('a stack of two is a disc of twice the modulus', () => {
    const stack = discAtFlow({ ...disc, count: 2 }, holes, 1e-6, 0.34);
    const stiff = discAtFlow({ ...disc, elasticModulus: 6e9 }, holes, 1e-6, 0.34);
    expect(stack.pressure / stiff.pressure).toBeCloseTo(1, 12);
  });

  test('held by a stop, pressure and load go with the flow', () => {
    const held = { ...disc, largestLift: 5e-5 };
    const [one, two] = [discAtFlow(held, holes, 1e-6, 0.34), discAtFlow(held, holes, 2e-6, 0.34)];
    expect(one.lift).toBeCloseTo(5e-5, 12);
    expect(two.lift).toBe(one.lift);
    expect(two.pressure / one.pressure).toBeCloseTo(2, 9);
    expect(two.load / one.load).toBeCloseTo(2, 9);
    expect(one.pressure).toBeGreaterThan(discAtFlow(disc, holes, 1e-6, 0.34).pressure);
  });

  test('preloaded, it runs below the pressure that opened it, and the forces on disc and seat close', () => {
    const preloaded = discAtFlow({ ...disc, preload: 5e-5 }, holes, 1e-7, 0.34);
    expect(preloaded.pressure).toBeLessThan(0.8 * preloaded.openingPressure);
    expect(preloaded.pressure).toBeGreaterThan(discAtFlow(disc, holes, 1e-7, 0.34).pressure);
    expect(preloaded.contactForce).toBeGreaterThan(0);
  });

  test.each([
    [{ ...disc, thickness: 0 }, holes, 'disc.thickness'],
    [{ ...disc, count: 0 }, holes, 'disc.count'],
    [disc, { ...holes, pitchDiameter: 6e-3 }, 'holes.pitchDiameter'],
    [disc, { ...holes, pitchDiameter: 9.5e-3 }, 'holes.pitchDiameter'],
  ])('refuses what does not fit', (one, under, field) => {
    expect(() => discAtFlow(one, under, 1e-6, 0.34)).toThrow(field);
  });
});
