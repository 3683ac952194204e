import { refuse, requirePositive, requireRecord, requireWithin, requireWord } from '../../base/checks.js';
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
  requireRecord(edge, field);
  requireWord(edge.kind, ['rounded', 'chamfered'], `${field}.kind`);
  if (edge.kind === 'rounded') requirePositive(edge.radius, `${field}.radius`, 'm');
  else {
    requirePositive(edge.depth, `${field}.depth`, 'm');
    requirePositive(edge.halfAngle, `${field}.halfAngle`, 'rad');
    requireWithin(edge.halfAngle, 0, 1.4, `${field}.halfAngle`, 'rad');
  }
  const depth = edgeDepth(edge);
  if (depth >= thickness) {
    refuse(
      depth,
      `${field}.${edge.kind === 'rounded' ? 'radius' : 'depth'}`,
      'm',
      `below the piston thickness of ${thickness} (it is ${depth - thickness} too deep)`,
      { below: thickness },
    );
  }
}

/** Throws unless the shape fits into the thickness of the piston. */
export function requireHoleShape(group: HoleGroup, thickness: number, field: string): void {
  const { shape } = group;
  if (shape === undefined) return;
  requireRecord(shape, `${field}.shape`);
  requireWord(shape.kind, ['straight', 'conical', 'stepped', 'slot'], `${field}.shape.kind`);
  if (shape.kind === 'straight') {
    requireEdge(shape.blindEdge, thickness, `${field}.shape.blindEdge`);
    requireEdge(shape.shaftEdge, thickness, `${field}.shape.shaftEdge`);
    const both = edgeDepth(shape.blindEdge) + edgeDepth(shape.shaftEdge);
    if (both >= thickness) {
      refuse(
        both,
        `${field}.shape`,
        'm',
        `edges that leave some of the piston thickness of ${thickness}, so together below it,`,
        { below: thickness },
      );
    }
  } else if (shape.kind === 'slot') {
    requirePositive(shape.travel, `${field}.shape.travel`, 'm');
  } else {
    requirePositive(shape.shaftSideDiameter, `${field}.shape.shaftSideDiameter`, 'm');
    if (shape.kind === 'stepped') {
      requirePositive(shape.shaftSideLength, `${field}.shape.shaftSideLength`, 'm');
      if (shape.shaftSideLength >= thickness) {
        refuse(
          shape.shaftSideLength,
          `${field}.shape.shaftSideLength`,
          'm',
          `below the piston thickness of ${thickness}`,
          { below: thickness },
        );
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
