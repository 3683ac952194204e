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

/** A disc over its holes, in a bore: few, since each disc is tabled once, on any number of pistons. */
function randomValve(next: Next) {
  const bore = within(next, 8e-3, 20e-3);
  const pitchDiameter = 0.65 * bore;
  const valved = { count: 1 + Math.floor(6 * next()), diameter: within(next, 0.5e-3, 1.4e-3), pitchDiameter };
  const outerDiameter = Math.min(bore, pitchDiameter + valved.diameter + 1.5e-3);
  const thickness = decades(next, 3e-5, 2e-4);
  const disc = {
    face: next() < 0.5 ? ('shaft-side' as const) : ('blind-side' as const),
    outerDiameter,
    clampDiameter: pitchDiameter - valved.diameter - 0.5e-3,
    thickness,
    count: 1 + Math.floor(3 * next()),
    elasticModulus: decades(next, 2e9, 2e11),
    poissonRatio: within(next, 0.2, 0.4),
    preload: next() < 0.3 ? 0 : thickness * decades(next, 1e-3, 1),
    ...(next() < 0.3 ? { largestLift: thickness * decades(next, 0.1, 5) } : {}),
  };
  return { bore, valved, disc };
}

const pool = randomNumbers(7);
const valves = Array.from({ length: 24 }, () => randomValve(pool));

/** One damper, one oil and one speed, rather beyond what anybody builds; with a valve in half of them, or always. */
export function randomDamper(
  next: Next,
  valveShare = 0.5,
): { damper: Damper; fluid: FluidState; speed: number } {
  const { bore, valved, disc } = valves[Math.floor(valves.length * next())] ?? randomValve(next);
  const thickness = within(next, 0.5e-3, 5e-3);
  const pistonDiameter = bore - decades(next, 1e-5, 4e-4);
  const holes = Array.from({ length: Math.floor(11 * next()) }, (): HoleGroup => {
    const diameter = decades(next, 0.2e-3, 2.5e-3);
    const shape = randomShape(next, diameter, thickness);
    const group = { count: 1 + Math.floor(4 * next()), diameter };
    return shape === undefined ? group : { ...group, shape };
  });
  const piston = {
    diameter: pistonDiameter,
    thickness,
    holes: [...holes, valved],
    eccentricity: 0.99 * next(),
    valves: next() < valveShare ? [{ ...disc, covers: [holes.length] }] : [],
  };
  const thins = next() < 0.01;
  const fluid = { kinematicViscosity: decades(next, 5e-6, 2e-2), density: within(next, 800, 1100) };
  return {
    damper: {
      bore,
      shaftDiameter: within(next, 2e-3, 4e-3),
      stroke: 10e-3,
      piston,
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
