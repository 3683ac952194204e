import { requirePositive, requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import type { HoleEdge } from '../geometry/hole-shape.js';
import type { HoleGroup } from '../geometry/piston.js';

/** How much wider a hole is at an edge than inside, as a radius [m]. */
export function edgeWidening(edge: HoleEdge | undefined): number {
  if (edge === undefined) return 0;
  return edge.kind === 'rounded' ? edge.radius : edge.depth * Math.tan(edge.halfAngle);
}

/** How deep an edge reaches into the piston [m]. */
export function edgeDepth(edge: HoleEdge | undefined): number {
  if (edge === undefined) return 0;
  return edge.kind === 'rounded' ? edge.radius : edge.depth;
}

function requireEdge(edge: HoleEdge | undefined, thickness: number, field: string): void {
  if (edge === undefined) return;
  if (edge.kind === 'rounded') requirePositive(edge.radius, `${field}.radius`, 'm');
  else {
    requirePositive(edge.depth, `${field}.depth`, 'm');
    requirePositive(edge.halfAngle, `${field}.halfAngle`, 'rad');
    requireWithin(edge.halfAngle, 0, 1.4, `${field}.halfAngle`, 'rad');
  }
  const depth = edgeDepth(edge);
  if (depth >= thickness) {
    throw new InputError({
      field: `${field}.${edge.kind === 'rounded' ? 'radius' : 'depth'}`,
      value: depth,
      unit: 'm',
      accepted: `below the piston thickness of ${thickness} (it is ${depth - thickness} too deep)`,
      limits: { below: thickness },
    });
  }
}

/** Throws unless the shape fits into the thickness of the piston. */
export function requireHoleShape(group: HoleGroup, thickness: number, field: string): void {
  const { shape } = group;
  if (shape === undefined) return;
  if (shape.kind === 'straight') {
    requireEdge(shape.blindEdge, thickness, `${field}.shape.blindEdge`);
    requireEdge(shape.shaftEdge, thickness, `${field}.shape.shaftEdge`);
    const both = edgeDepth(shape.blindEdge) + edgeDepth(shape.shaftEdge);
    if (both >= thickness) {
      throw new InputError({
        field: `${field}.shape`,
        value: both,
        unit: 'm',
        accepted: `edges that leave some of the piston thickness of ${thickness}, so together below it,`,
        limits: { below: thickness },
      });
    }
  } else if (shape.kind === 'slot') {
    requirePositive(shape.travel, `${field}.shape.travel`, 'm');
  } else {
    requirePositive(shape.shaftSideDiameter, `${field}.shape.shaftSideDiameter`, 'm');
    if (shape.kind === 'stepped') {
      requirePositive(shape.shaftSideLength, `${field}.shape.shaftSideLength`, 'm');
      if (shape.shaftSideLength >= thickness) {
        throw new InputError({
          field: `${field}.shape.shaftSideLength`,
          value: shape.shaftSideLength,
          unit: 'm',
          accepted: `below the piston thickness of ${thickness}`,
          limits: { below: thickness },
        });
      }
    }
  }
}

/** Narrowest diameter of a hole [m]; of a slot its hydraulic diameter `4 A/P`, which makes its Reynolds number. */
export function throatDiameter(group: HoleGroup): number {
  const { diameter, shape } = group;
  if (shape === undefined || shape.kind === 'straight') return diameter;
  if (shape.kind === 'slot') return (4 * throatArea(group)) / (Math.PI * diameter + 2 * shape.travel);
  return Math.min(diameter, shape.shaftSideDiameter);
}

/** Area of one hole at its narrowest [m²]. */
export function throatArea(group: HoleGroup): number {
  const { diameter, shape } = group;
  if (shape?.kind === 'slot') return (Math.PI / 4) * diameter ** 2 + diameter * shape.travel;
  return (Math.PI / 4) * throatDiameter(group) ** 2;
}

/** Widest extent of a hole at either face [m]; slots are taken to lie along the pitch circle. */
export function mouthWidth({ diameter, shape }: HoleGroup): number {
  if (shape === undefined) return diameter;
  if (shape.kind === 'slot') return diameter + shape.travel;
  if (shape.kind === 'straight') {
    return diameter + 2 * Math.max(edgeWidening(shape.blindEdge), edgeWidening(shape.shaftEdge));
  }
  return Math.max(diameter, shape.shaftSideDiameter);
}
