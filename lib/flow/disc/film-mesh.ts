import { type DiscShape, sectorAngle } from './disc-shape.js';

/** Elements on the way from the edge of the hole outwards, more where the next hole is far, and how much longer the last is than the first. */
const elementsOutwards = (holes: number) => (holes > 2 ? 3 : 4);
const growth = 4;

/** Length of an element along the outline, in the mapped plane; far from a lone hole they may be longer. */
const elementLength = 0.4;
const mostElements = 4;

/**
 * Nodes of the film in half a sector, mapped by the logarithm of the complex radius, which leaves Reynolds' equation as it is and turns the
 * sector into a rectangle: `x = ln r`, `y` the angle. Lines of nodes run from the edge of the hole to the outline.
 */
export interface FilmMesh {
  /** Nodes on each line, odd: elements have three by three. */
  readonly perLine: number;
  readonly lines: number;
  readonly x: Float64Array;
  readonly y: Float64Array;
  /** Angle of each line's start on the edge of the hole, seen from its centre. */
  readonly holeAngles: readonly number[];
  /** How many of the first lines end at the rim. */
  readonly rimLines: number;
}

type Point = readonly [number, number];

/** Places from 0 to a length, half evenly, half at even angles as seen from a distance. */
function places(length: number, distance: number): readonly number[] {
  const count = 2 * Math.min(Math.max(1, Math.round(length / elementLength)), mostElements);
  return Array.from({ length: count + 1 }, (_, index) => {
    const part = index / count;
    return (part * length + distance * Math.tan(part * Math.atan(length / distance))) / 2;
  });
}

/** Nodes round the outline: along the rim, the plane of symmetry half way to the next hole, and the clamp. */
function outline(shape: DiscShape): { points: readonly Point[]; rimLines: number } {
  const centre = Math.log(shape.pitchRadius);
  const inside = Math.log(shape.clampRadius);
  const height = sectorAngle(shape);
  const rim = places(height, -centre).map((y): Point => [0, y]);
  const outer = places(-centre, height).map((x): Point => [centre + x, height]);
  const inner = places(centre - inside, height).map((x): Point => [centre - x, height]);
  const clamp = places(height, centre - inside).map((y): Point => [inside, y]);
  return {
    points: [...rim, ...outer.reverse().slice(1), ...inner.slice(1), ...clamp.reverse().slice(1)],
    rimLines: rim.length,
  };
}

/** Places the nodes of the film. */
export function filmMesh(shape: DiscShape): FilmMesh {
  const { pitchRadius, holeRadius } = shape;
  const { points, rimLines } = outline(shape);
  const centre = Math.log(pitchRadius);
  const perLine = 2 * elementsOutwards(shape.holes) + 1;
  const x = new Float64Array(points.length * perLine);
  const y = new Float64Array(points.length * perLine);
  const holeAngles = points.map(([outlineX, outlineY]) => Math.atan2(outlineY, outlineX - centre));
  points.forEach(([outlineX, outlineY], line) => {
    const angle = holeAngles[line]!;
    const real = pitchRadius + holeRadius * Math.cos(angle);
    const imaginary = holeRadius * Math.sin(angle);
    const edgeX = Math.log(Math.hypot(real, imaginary));
    const edgeY = Math.atan2(imaginary, real);
    for (let node = 0; node < perLine; node++) {
      const part = (growth ** (node / (perLine - 1)) - 1) / (growth - 1);
      x[line * perLine + node] = edgeX + part * (outlineX - edgeX);
      y[line * perLine + node] = edgeY + part * (outlineY - edgeY);
    }
  });
  return { perLine, lines: points.length, x, y, holeAngles, rimLines };
}
