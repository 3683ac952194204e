import type { Damper } from '../../lib/damper/damper.js';
import type { HoleShape } from '../../lib/flow/geometry/hole-shape.js';
import type { HoleGroup } from '../../lib/flow/geometry/piston.js';
import type { FluidState } from '../../lib/fluid/oil/fluid-state.js';
import { sealedGas } from '../../lib/gas/gas.js';

/** Marsaglia's xorshift32: the same numbers on every machine. */
export function randomNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return (state >>> 0) / 2 ** 32;
  };
}

type Next = () => number;
const within = (next: Next, low: number, high: number) => low + next() * (high - low);
const decades = (next: Next, low: number, high: number) => low * (high / low) ** next();

function randomShape(next: Next, diameter: number, thickness: number): HoleShape | undefined {
  const pick = Math.floor(6 * next());
  const edge = 0.4 * thickness * next() + 1e-6;
  if (pick === 0) return { kind: 'conical', shaftSideDiameter: diameter * within(next, 0.4, 2.5) };
  if (pick === 1) {
    return {
      kind: 'stepped',
      shaftSideDiameter: diameter * within(next, 0.4, 2.5),
      shaftSideLength: thickness * within(next, 0.05, 0.95),
    };
  }
  if (pick === 2) return { kind: 'slot', travel: diameter * within(next, 0.01, 2) };
  if (pick === 3) return { kind: 'straight', blindEdge: { kind: 'rounded', radius: edge } };
  if (pick === 4) {
    return {
      kind: 'straight',
      shaftEdge: { kind: 'chamfered', depth: edge, halfAngle: within(next, 0.1, 1.3) },
    };
  }
  return undefined;
}

/** One damper, one oil and one speed, rather beyond what anybody builds. */
export function randomDamper(next: Next): { damper: Damper; fluid: FluidState; speed: number } {
  const bore = within(next, 8e-3, 20e-3);
  const thickness = within(next, 0.5e-3, 5e-3);
  const pistonDiameter = bore - decades(next, 1e-5, 4e-4);
  const pitchDiameter = 0.65 * pistonDiameter;
  const holes = Array.from({ length: 1 + Math.floor(10 * next()) }, (): HoleGroup => {
    const diameter = decades(next, 0.2e-3, 2.5e-3);
    const shape = randomShape(next, diameter, thickness);
    const group = { count: 1 + Math.floor(4 * next()), diameter };
    return shape === undefined ? group : { ...group, shape };
  });
  const valved = { count: 1 + Math.floor(2 * next()), diameter: within(next, 0.5e-3, 1.4e-3), pitchDiameter };
  const piston = {
    diameter: pistonDiameter,
    thickness,
    holes: [...holes, valved],
    eccentricity: 0.99 * next(),
  };
  const disc = {
    face: next() < 0.5 ? ('shaft-side' as const) : ('blind-side' as const),
    covers: [holes.length],
    outerDiameter: Math.min(bore, pitchDiameter + valved.diameter + 1.5e-3),
    clampDiameter: pitchDiameter - valved.diameter - 0.5e-3,
    thickness: decades(next, 3e-5, 2e-4),
    count: 1 + Math.floor(3 * next()),
    elasticModulus: decades(next, 2e9, 2e11),
    poissonRatio: within(next, 0.2, 0.4),
    preload: next() < 0.3 ? 0 : decades(next, 1e-8, 1e-6),
  };
  const valves = next() < 0.5 ? [disc] : [];
  const thins = next() < 0.01;
  const fluid = { kinematicViscosity: decades(next, 5e-6, 2e-2), density: within(next, 800, 1100) };
  return {
    damper: {
      bore,
      shaftDiameter: within(next, 2e-3, 4e-3),
      stroke: 10e-3,
      piston: { ...piston, valves },
      gas: sealedGas({ volume: 1e-6, pressure: 1e9, polytropicExponent: 1, ambientPressure: 1e5 }),
      seal: { kineticForce: 0, breakawayForce: 0 },
    },
    fluid: thins
      ? {
          ...fluid,
          shearThinning: { kind: 'cross', time: decades(next, 1e-7, 1e-3), exponent: 0.7, floor: 0.05 },
        }
      : fluid,
    speed: decades(next, 1e-5, 5),
  };
}
