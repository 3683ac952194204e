import type { HoleEdge, HoleShape } from '../../lib/flow/geometry/hole-shape.js';
import { throatDiameter } from '../../lib/flow/hole/hole-shape.js';
import type { WallPoint } from './solve-hole.js';

/** Straight pieces that stand for a quarter round. */
const roundPieces = 8;

/** Points of an edge from its mouth inwards, in metres; the last one is where the straight wall begins. */
function edgePoints(edge: HoleEdge | undefined, radius: number): readonly WallPoint[] {
  if (edge === undefined) return [[0, radius]];
  if (edge.kind === 'chamfered') {
    return [
      [0, radius + edge.depth * Math.tan(edge.halfAngle)],
      [edge.depth, radius],
    ];
  }
  return Array.from({ length: roundPieces + 1 }, (_, piece): WallPoint => {
    const angle = (piece * Math.PI) / 2 / roundPieces;
    return [edge.radius * (1 - Math.cos(angle)), radius + edge.radius * (1 - Math.sin(angle))];
  });
}

/** The wall of a hole of revolution from the blind to the shaft side, in units of its narrowest diameter. */
export function holeWall(diameter: number, thickness: number, shape: HoleShape): readonly WallPoint[] {
  const unit = throatDiameter({ count: 1, diameter, shape });
  const scaled = (points: readonly WallPoint[]) =>
    points.map(([along, radius]): WallPoint => [along / unit, radius / unit]);
  const radius = diameter / 2;
  switch (shape.kind) {
    case 'straight': {
      const behind = edgePoints(shape.shaftEdge, radius).map(
        ([along, r]): WallPoint => [thickness - along, r],
      );
      return scaled([...edgePoints(shape.blindEdge, radius), ...behind.reverse()]);
    }
    case 'conical':
      return scaled([
        [0, radius],
        [thickness, shape.shaftSideDiameter / 2],
      ]);
    case 'stepped': {
      const step = thickness - shape.shaftSideLength;
      const second = shape.shaftSideDiameter / 2;
      return scaled([
        [0, radius],
        [step, radius],
        [step, second],
        [thickness, second],
      ]);
    }
    case 'slot':
      throw new RangeError('a slot is no hole of revolution');
  }
}

/** The same hole for flow from the shaft to the blind side. */
export function turnedRound(wall: readonly WallPoint[]): readonly WallPoint[] {
  const length = wall.at(-1)?.[0] ?? 0;
  return wall.map(([along, radius]): WallPoint => [length - along, radius]).reverse();
}
