import { describe, expect, test } from 'vitest';
import { discCurve } from '../../lib/flow/disc/disc-curve.js';
import type { DiscState } from '../../lib/flow/disc/disc-table.js';
import type { HoleShape } from '../../lib/flow/geometry/hole-shape.js';
import type { HoleGroup, Piston } from '../../lib/flow/geometry/piston.js';
import { mouthWidth, throatArea, throatDiameter } from '../../lib/flow/hole/hole-shape.js';
import { pistonInertance } from '../../lib/flow/piston/inertance.js';
import { pistonFlow } from '../../lib/flow/piston/piston-flow.js';
import { coveredHoles } from '../../lib/flow/valve/disc-units.js';
import { ConvergenceError } from '../../lib/numeric/root-finding.js';

const fluid = { density: 970, kinematicViscosity: 3.5e-4 };
const bore = 0.012;
const piston = (holes: readonly HoleGroup[]): Piston => ({
  diameter: 0.0119,
  thickness: 0.0025,
  holes,
  eccentricity: 0,
});
const hole = (shape: HoleShape): HoleGroup => ({ count: 4, diameter: 1.2e-3, shape });

describe('how wide a hole is, by hand', () => {
  const chamfer = { kind: 'chamfered', depth: 0.2e-3, halfAngle: Math.PI / 4 } as const;
  const rounding = { kind: 'rounded', radius: 0.3e-3 } as const;
  // Shape; width at the blind face, at the shaft face and at the wider of the two; narrowest diameter [mm].
  test.each([
    ['a chamfer at the blind side', { kind: 'straight', blindEdge: chamfer }, 1.6, 1.2, 1.6, 1.2],
    ['edges on both', { kind: 'straight', blindEdge: chamfer, shaftEdge: rounding }, 1.6, 1.8, 1.8, 1.2],
    ['a taper', { kind: 'conical', shaftSideDiameter: 0.9e-3 }, 1.2, 0.9, 1.2, 0.9],
    ['a step', { kind: 'stepped', shaftSideDiameter: 2e-3, shaftSideLength: 1e-3 }, 1.2, 2, 2, 1.2],
  ] as const)('%s', (_, shape, blind, shaft, widest, throat) => {
    const group = hole(shape);
    expect(1e3 * mouthWidth(group)).toBeCloseTo(widest, 12);
    expect(1e3 * throatDiameter(group)).toBeCloseTo(throat, 12);
    expect(1e3 * coveredHoles([group], 'blind-side', 8e-3).diameter).toBeCloseTo(blind, 12);
    expect(1e3 * coveredHoles([group], 'shaft-side', 8e-3).diameter).toBeCloseTo(shaft, 12);
  });

  test('a slot of 1.2 mm by 2 mm between centres: π/4·1.44 + 2.4 mm², and 3.2 mm long', () => {
    const slot = hole({ kind: 'slot', travel: 2e-3 });
    const area = (Math.PI / 4) * 1.44 + 2.4;
    expect(1e6 * throatArea(slot)).toBeCloseTo(area, 12);
    expect(1e3 * mouthWidth(slot)).toBeCloseTo(3.2, 12);
    // Under a disc it counts as a round hole of its area; across, as four times its area over its edge.
    expect(1e3 * coveredHoles([slot], 'blind-side', 8e-3).diameter).toBeCloseTo(
      Math.sqrt((4 * area) / Math.PI),
      12,
    );
    expect(1e3 * throatDiameter(slot)).toBeCloseTo((4 * area) / (Math.PI * 1.2 + 4), 12);
  });

  test('unlike holes under a disc count as so many of one size with their area', () => {
    const two = coveredHoles(
      [
        { count: 1, diameter: 1e-3 },
        { count: 3, diameter: 2e-3 },
      ],
      'blind-side',
      8e-3,
    );
    expect(two.count).toBe(4);
    expect(1e6 * two.diameter ** 2).toBeCloseTo(13 / 4, 12);
  });
});

test('a taper of one diameter is a straight hole', () => {
  const straight = pistonFlow(piston([hole({ kind: 'straight' })]), bore, fluid);
  const even = pistonFlow(piston([hole({ kind: 'conical', shaftSideDiameter: 1.2e-3 })]), bore, fluid);
  for (const drop of [-1e6, -1e3, 1e2, 1e5]) expect(even.flow(drop) / straight.flow(drop)).toBeCloseTo(1, 9);
});

describe('at rest', () => {
  const shearThinning = { kind: 'carreau-yasuda', time: 1e-3, exponent: 0.5, bend: 2, floor: 0.1 } as const;

  test('an oil that thins does not flow and has the slope that it has without thinning', () => {
    const thin = pistonFlow(piston([{ count: 4, diameter: 1.2e-3 }]), bore, { ...fluid, shearThinning });
    const plain = pistonFlow(piston([{ count: 4, diameter: 1.2e-3 }]), bore, fluid);
    expect(thin.flow(0)).toBe(0);
    const [of, without] = [thin.paths[0]?.resistance, plain.paths[0]?.resistance];
    expect(of?.pressureDrop(0)).toBe(0);
    expect((of?.slope(0) ?? 0) / (without?.creepingSlope ?? 1)).toBeCloseTo(1, 9);
    expect(thin.flow(1e-3) / plain.flow(1e-3)).toBeCloseTo(1, 6);
  });

  test('a flow of none has no pressure, whether it rose to that or fell', () => {
    const flow = pistonFlow(piston([{ count: 4, diameter: 1.2e-3 }]), bore, fluid);
    for (const { pressureDrop, holeSpeeds } of [flow.pressureDrop(0), flow.fallingPressureDrop(0)]) {
      expect(pressureDrop).toBe(0);
      expect(holeSpeeds).toEqual([0]);
    }
  });
});

describe('the inertance of a piston', () => {
  const covered = { count: 4, diameter: 1.5e-3, pitchDiameter: 7.8e-3 };
  const disc = {
    face: 'shaft-side',
    covers: [0],
    outerDiameter: 0.0105,
    clampDiameter: 0.005,
    thickness: 1e-4,
    count: 1,
    elasticModulus: 2e11,
    poissonRatio: 0.3,
    preload: 2e-6,
  } as const;

  test('is that of the holes under discs where there are no others', () => {
    const under = pistonFlow({ ...piston([covered]), valves: [disc] }, bore, fluid);
    const open = pistonFlow(piston([covered]), bore, fluid);
    expect(under.paths).toEqual([]);
    expect(pistonInertance(under, 970) / pistonInertance(open, 970)).toBeCloseTo(1, 12);
  });

  test('is none without holes, and halves with twice as many', () => {
    expect(pistonInertance({ paths: [], valves: [] }, 970)).toBe(0);
    const of = (count: number) =>
      pistonInertance(pistonFlow(piston([{ ...covered, count }]), bore, fluid), 970);
    expect(of(2) / of(4)).toBeCloseTo(2, 12);
  });
});

test('two groups of like holes under one disc are one group of as many, slow and fast', () => {
  const disc = {
    face: 'shaft-side',
    outerDiameter: 0.0105,
    clampDiameter: 0.005,
    thickness: 1e-4,
    count: 1,
    elasticModulus: 2e11,
    poissonRatio: 0.3,
    preload: 0,
  } as const;
  const two = { count: 2, diameter: 1.5e-3, pitchDiameter: 7.8e-3 };
  const parted = pistonFlow({ ...piston([two, two]), valves: [{ ...disc, covers: [0, 1] }] }, bore, fluid);
  const whole = pistonFlow(
    { ...piston([{ ...two, count: 4 }]), valves: [{ ...disc, covers: [0] }] },
    bore,
    fluid,
  );
  for (const drop of [1e2, 1e4, 1e6, -1e5]) expect(parted.flow(drop) / whole.flow(drop)).toBeCloseTo(1, 8);
});

describe('the curve of a disc with one balance only', () => {
  const only: DiscState = {
    lift: 0.5,
    pressure: 8,
    flow: 3,
    load: 1,
    contact: 0,
    rimMean: 0.6,
    rimAtHole: 0.7,
    rimBetween: 0.5,
  };
  const table = { shape: {} as never, openingPressure: 2, states: [only] };
  const point = { pressure: 0, pressureSlope: 0, flow: 0, flowSlope: 0 };
  const at = (lift: number, largest = Number.POSITIVE_INFINITY) => {
    discCurve(table, largest).write(lift, point);
    return [point.pressure, point.flow];
  };

  test('goes through it; below, pressure in a straight line and flow by the fourth power', () => {
    expect(at(0.5)).toEqual([8, 3]);
    const [pressure = 0, flow = 0] = at(0.25);
    expect(pressure).toBeCloseTo(5, 12);
    expect(flow).toBeCloseTo(3 / 16, 12);
  });

  test('goes on beyond it in proportion and by the fourth power, up to a stop; from there both alike', () => {
    const [pressure = 0, flow = 0] = at(1);
    expect(pressure).toBeCloseTo(16, 12);
    expect(flow).toBeCloseTo(48, 10);
    const [held = 0, through = 0] = at(3, 1);
    expect(held).toBeCloseTo(48, 10);
    expect(through).toBeCloseTo(144, 9);
  });

  test('is none without a balance', () => {
    expect(() => discCurve({ ...table, states: [] }, 1)).toThrow(ConvergenceError);
  });
});
