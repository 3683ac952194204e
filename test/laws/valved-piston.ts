import fc from 'fast-check';
import type { DiscValve } from '../../lib/flow/geometry/disc-valve.js';
import type { Piston } from '../../lib/flow/geometry/piston.js';

export const bore = 0.012;
export const disc: DiscValve = {
  face: 'shaft-side',
  covers: [1],
  outerDiameter: 0.0105,
  clampDiameter: 0.005,
  thickness: 1e-4,
  count: 1,
  elasticModulus: 2e11,
  poissonRatio: 0.3,
  preload: 2e-6,
};
export const piston = (valve: Partial<DiscValve> = {}): Piston => ({
  diameter: 0.01195,
  thickness: 0.0025,
  holes: [
    { count: 2, diameter: 1.2e-3 },
    { count: 2, diameter: 1.5e-3, pitchDiameter: 0.0078 },
  ],
  eccentricity: 0,
  valves: [{ ...disc, ...valve }],
});
export const open: Piston = { ...piston(), valves: [] };
export const shut: Piston = { ...open, holes: open.holes.slice(0, 1) };
export const anyDrop = fc.double({ min: 2, max: 6.5, noNaN: true }).map((decades) => 10 ** decades);
// Few, since each is tabled once.
export const anyThickness = fc.constantFrom(5e-5, 8e-5, 1.1e-4, 1.7e-4, 3e-4);
