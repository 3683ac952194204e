import type { HoleGroup } from '../../flow/geometry/piston.js';

/** Thinnest wall between two holes, and between a hole and rim or shaft, that this format takes for drilled [m]. */
export const thinnestWall = 1e-4;

/** A hole on the face of a piston: its middle in polar coordinates about the shaft. */
export interface PlacedHole {
  /** Diameter [m]. */
  readonly diameter: number;
  /** Distance from the middle of the piston [m]. */
  readonly radius: number;
  /** Angle about the shaft [rad]. */
  readonly angle: number;
}

/** A ring of holes that all touch, but for one wall, a circle of radius `outer` [m]. */
interface Ring {
  readonly outer: number;
  /** Angle taken so far [rad]. */
  taken: number;
}

/**
 * Places holes on rings around the shaft, largest first, each against the outside of the first ring with room.
 *
 * A hole takes the angle `2 asin((d + wall) / 2R)` of its ring, R the distance of its middle: the wedge that holds
 * the hole with half a wall around it. Wedges do not overlap, so placed holes never do; for holes of one size on one
 * ring the rule is exact, for mixed sizes it is a little strict.
 *
 * @param holes - holes by size, diameters [m] above 0
 * @param faceDiameter - diameter of the piston [m]
 * @param shaftDiameter - diameter of the shaft [m], above 0
 * @returns the holes placed, and the diameters [m] of those that found no room
 */
export function placeHoles(
  holes: readonly HoleGroup[],
  faceDiameter: number,
  shaftDiameter: number,
): { readonly placed: readonly PlacedHole[]; readonly left: readonly number[] } {
  const diameters = holes
    .flatMap(({ count, diameter }) => new Array<number>(count).fill(diameter))
    .sort((a, b) => b - a);
  const placed: PlacedHole[] = [];
  const left: number[] = [];
  const rings: Ring[] = [];
  let outer = faceDiameter / 2;
  for (const diameter of diameters) {
    const fits = (ring: Ring): boolean => ring.taken + wedge(ring.outer, diameter) <= 2 * Math.PI;
    let ring = rings.find(fits);
    if (ring === undefined && outer - diameter - 2 * thinnestWall >= shaftDiameter / 2) {
      ring = { outer, taken: 0 };
      rings.push(ring);
      outer -= diameter + thinnestWall;
    }
    if (ring === undefined) {
      left.push(diameter);
      continue;
    }
    const angle = wedge(ring.outer, diameter);
    placed.push({ diameter, radius: middle(ring.outer, diameter), angle: ring.taken + angle / 2 });
    ring.taken += angle;
  }
  return { placed, left };
}

/** Distance [m] of the middle of a hole from the shaft's. */
function middle(outer: number, diameter: number): number {
  return outer - thinnestWall - diameter / 2;
}

/** Angle [rad] that a hole and half a wall on each side take. */
function wedge(outer: number, diameter: number): number {
  return 2 * Math.asin((diameter + thinnestWall) / (2 * middle(outer, diameter)));
}
