import type { Damper } from '../../damper/damper.js';
import type { Design } from './design-problem.js';

/** What the drill decides of a design. */
export type Drilled = Pick<Design, 'count' | 'drill' | 'taper' | 'thickness'>;

/** The damper with a piston of its diameter and eccentricity that is drilled anew, without valves. */
export function drilledDamper(damper: Damper, { count, drill, taper, thickness }: Drilled): Damper {
  const { diameter, eccentricity } = damper.piston;
  const straight = { count, diameter: drill };
  const tapered = {
    count,
    diameter: drill - taper / 2,
    shape: { kind: 'conical', shaftSideDiameter: drill + taper / 2 } as const,
  };
  return {
    ...damper,
    piston: { diameter, eccentricity, thickness, holes: [taper === 0 ? straight : tapered] },
  };
}
