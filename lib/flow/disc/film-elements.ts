import { gaussLegendre } from '../../numeric/gauss-legendre.js';
import type { DeflectionModes } from './deflection-modes.js';
import type { DiscShape } from './disc-shape.js';
import type { FilmMesh } from './film-mesh.js';

/** Nodes of an element, and points at which it is looked at. */
export const nodesPerElement = 9;

/** Film and disc at the points where the film is integrated, nine to an element. */
export interface FilmElements {
  readonly elements: number;
  /** Nodes of each element, in rising order. */
  readonly nodes: Int32Array;
  /** Value of each node's function at the points of an element. */
  readonly values: Float64Array;
  /** Products of the slopes of each pair of nodes with the area of a point, in the mapped plane: nine by nine a point. */
  readonly products: Float64Array;
  /** Area of each point on the disc. */
  readonly areas: Float64Array;
  /** Shapes of the disc at each point. */
  readonly shapes: Float64Array;
}

/** Functions of three nodes at 0, ½ and 1, and their slopes. */
export function threeNodes(u: number): { values: readonly number[]; slopes: readonly number[] } {
  return {
    values: [(1 - u) * (1 - 2 * u), 4 * u * (1 - u), u * (2 * u - 1)],
    slopes: [4 * u - 3, 4 - 8 * u, 4 * u - 1],
  };
}

/** Nine nodes of element `across`, `along`: three lines, three on each. */
function elementNodes(perLine: number, across: number, along: number): readonly number[] {
  return Array.from(
    { length: nodesPerElement },
    (_, node) => (2 * across + Math.floor(node / 3)) * perLine + 2 * along + (node % 3),
  );
}

/** Everything about the film that does not change with the deflection. */
export function filmElements(mesh: FilmMesh, modes: DeflectionModes): FilmElements {
  const { perLine, lines, x, y } = mesh;
  const along = (perLine - 1) / 2;
  const elements = along * ((lines - 1) / 2);
  const points = elements * nodesPerElement;
  const { places, weights } = gaussLegendre(3);
  const made = {
    elements,
    nodes: new Int32Array(elements * nodesPerElement),
    values: new Float64Array(nodesPerElement * nodesPerElement),
    products: new Float64Array(points * nodesPerElement ** 2),
    areas: new Float64Array(points),
    shapes: new Float64Array(points * modes.count),
  };
  const functions = Array.from({ length: nodesPerElement }, (_, point) => {
    const across = threeNodes(places[Math.floor(point / 3)]!);
    const outwards = threeNodes(places[point % 3]!);
    return Array.from({ length: nodesPerElement }, (_, node) => {
      const [i, j] = [Math.floor(node / 3), node % 3];
      const value = across.values[i]! * outwards.values[j]!;
      made.values[point * nodesPerElement + node] = value;
      return {
        value,
        byAcross: across.slopes[i]! * outwards.values[j]!,
        byOutwards: across.values[i]! * outwards.slopes[j]!,
      };
    });
  });
  for (let element = 0; element < elements; element++) {
    const nodes = elementNodes(perLine, Math.floor(element / along), element % along);
    made.nodes.set(nodes, element * nodesPerElement);
    functions.forEach((at, local) => {
      const point = element * nodesPerElement + local;
      const sum = (of: Float64Array, by: 'value' | 'byAcross' | 'byOutwards') =>
        at.reduce((total, one, node) => total + one[by] * of[nodes[node]!]!, 0);
      const [xu, xv, yu, yv] = [
        sum(x, 'byAcross'),
        sum(x, 'byOutwards'),
        sum(y, 'byAcross'),
        sum(y, 'byOutwards'),
      ];
      const determinant = xu * yv - xv * yu;
      const area = Math.abs(determinant) * weights[Math.floor(local / 3)]! * weights[local % 3]!;
      const slopes = at.map(({ byAcross, byOutwards }) => [
        (byAcross * yv - byOutwards * yu) / determinant,
        (byOutwards * xu - byAcross * xv) / determinant,
      ]);
      made.products.set(
        slopes.flatMap(([ix = 0, iy = 0]) => slopes.map(([jx = 0, jy = 0]) => area * (ix * jx + iy * jy))),
        point * nodesPerElement ** 2,
      );
      const radius = Math.exp(sum(x, 'value'));
      made.areas[point] = area * radius * radius;
      modes.write(radius, sum(y, 'value'), made.shapes, point * modes.count);
    });
  }
  return made;
}

/** A point on the edge of hole or rim, where oil turns into the film or leaves it. */
export interface FilmEdge {
  readonly atHole: boolean;
  readonly nodes: readonly [number, number, number];
  readonly values: readonly number[];
  /** Length of edge, over the outer radius. */
  readonly length: number;
  readonly shapes: Float64Array;
}

/** The edges of hole and rim. */
export function filmEdges(shape: DiscShape, mesh: FilmMesh, modes: DeflectionModes): readonly FilmEdge[] {
  const { pitchRadius, holeRadius } = shape;
  const { perLine, lines, holeAngles, rimLines, y } = mesh;
  const { places: points, weights } = gaussLegendre(3);
  const edges: FilmEdge[] = [];
  const add = (atHole: boolean, line: number, radius: number, places: readonly number[]) => {
    const node = atHole ? 0 : perLine - 1;
    points.forEach((u, point) => {
      const { values, slopes } = threeNodes(u);
      const sum = (by: readonly number[]) =>
        by.reduce((total, one, index) => total + one * places[index]!, 0);
      const place = sum(values);
      const shapes = new Float64Array(modes.count);
      const [real, imaginary] = atHole
        ? [pitchRadius + radius * Math.cos(place), radius * Math.sin(place)]
        : [Math.cos(place), Math.sin(place)];
      modes.write(Math.hypot(real, imaginary), Math.atan2(imaginary, real), shapes, 0);
      edges.push({
        atHole,
        nodes: [line * perLine + node, (line + 1) * perLine + node, (line + 2) * perLine + node],
        values,
        length: weights[point]! * sum(slopes) * radius,
        shapes,
      });
    });
  };
  for (let line = 0; line + 2 < lines; line += 2) {
    add(true, line, holeRadius, holeAngles.slice(line, line + 3));
    if (line + 2 < rimLines) {
      add(
        false,
        line,
        1,
        [0, 1, 2].map((next) => y[(line + next) * perLine + perLine - 1]!),
      );
    }
  }
  return edges;
}
