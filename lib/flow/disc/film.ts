import { factorBand, solveBand } from '../../numeric/banded-cholesky.js';
import { addScaled, dot } from '../../numeric/vectors.js';
import type { DeflectionModes } from './deflection-modes.js';
import type { DiscShape } from './disc-shape.js';
import {
  type FilmEdge,
  type FilmElements,
  filmEdges,
  filmElements,
  nodesPerElement,
} from './film-elements.js';
import { edgeConductance, type Gaps, newGaps, writeGap } from './film-gap.js';
import { filmMesh } from './film-mesh.js';

/**
 * Where the disc touches, oil still creeps from node to node as through a gap of this part of the lift; without that, pressure there would hang
 * on nothing. Beside an open gap its cube counts for 1e-4.
 */
const leastGapOfLift = 0.05;

/** The film of one disc, without its gap. */
export interface Film {
  readonly shape: DiscShape;
  readonly elements: FilmElements;
  readonly edges: readonly FilmEdge[];
  readonly size: number;
  readonly band: number;
  /** How many shapes the disc has. */
  readonly count: number;
  /** Load on each shape by pressure 1 at each node of the film. */
  readonly nodeLoads: Float64Array;
  /** Area that a pressure 1 at each node acts on. */
  readonly nodeAreas: Float64Array;
}

/** Prepares the film of a disc. */
export function discFilm(shape: DiscShape, modes: DeflectionModes): Film {
  const mesh = filmMesh(shape);
  const elements = filmElements(mesh, modes);
  const size = mesh.lines * mesh.perLine;
  const { count } = modes;
  const nodeLoads = new Float64Array(count * size);
  const nodeAreas = new Float64Array(size);
  for (let point = 0; point < elements.areas.length; point++) {
    const element = Math.floor(point / nodesPerElement);
    for (let local = 0; local < nodesPerElement; local++) {
      const node = elements.nodes[element * nodesPerElement + local]!;
      const value = elements.values[(point % nodesPerElement) * nodesPerElement + local]!;
      const area = elements.areas[point]! * value;
      nodeAreas[node] = nodeAreas[node]! + area;
      for (let i = 0; i < count; i++) {
        const at = i * size + node;
        nodeLoads[at] = nodeLoads[at]! + area * elements.shapes[point * count + i]!;
      }
    }
  }
  return {
    shape,
    elements,
    edges: filmEdges(shape, mesh, modes),
    size,
    band: 2 * mesh.perLine + 3,
    count,
    nodeLoads,
    nodeAreas,
  };
}

/** A film solved for pressure 1 in the hole. */
export interface SolvedFilm {
  readonly factor: Float64Array;
  readonly pressure: Float64Array;
  /** Gap at each point of the elements. */
  readonly gaps: Gaps;
  /** Slope of each edge's conductance over the gap. */
  readonly edgeSlopes: Float64Array;
  /** Flow out of half a hole, over `p t³/12μ`. */
  readonly flow: number;
  /** Load of the film on each shape, without that of the hole. */
  readonly load: Float64Array;
}

/** Adds the conductance of the film between its nodes to the lower half of a band matrix. */
function addConductances(
  { elements, band }: Film,
  heights: Float64Array,
  least: number,
  matrix: Float64Array,
): void {
  const { nodes, products } = elements;
  const square = nodesPerElement ** 2;
  const own = new Float64Array(square);
  for (let element = 0; element < elements.elements; element++) {
    const first = element * nodesPerElement;
    own.fill(0);
    for (let point = first; point < first + nodesPerElement; point++) {
      addScaled(own, 0, products, point * square, square, heights[point]! ** 3 + least);
    }
    for (let i = 0; i < nodesPerElement; i++) {
      const row = nodes[first + i]!;
      const start = row * band + band - 1 - row;
      for (let j = 0; j <= i; j++) {
        const at = start + nodes[first + j]!;
        matrix[at] = matrix[at]! + own[i * nodesPerElement + j]!;
      }
    }
  }
}

/** Adds an edge to the matrix, and to the flow at its nodes what enters from the hole. */
function addEdge(
  edge: FilmEdge,
  conductance: number,
  band: number,
  matrix: Float64Array,
  flow: Float64Array,
) {
  for (let i = 0; i < 3; i++) {
    const row = edge.nodes[i]!;
    const part = conductance * edge.values[i]!;
    if (edge.atHole) flow[row] = flow[row]! + part;
    for (let j = 0; j <= i; j++) {
      const at = row * band + band - 1 - row + edge.nodes[j]!;
      matrix[at] = matrix[at]! + part * edge.values[j]!;
    }
  }
}

/** Reynolds' equation `∇·(w³ ∇p) = 0` with its ends, at a deflection above the seat. */
export function solveFilm(film: Film, lifted: Float64Array, softness: number, lift: number): SolvedFilm {
  const { shape, elements, edges, size, band, count } = film;
  const points = elements.areas.length;
  const gaps = newGaps(points);
  for (let point = 0; point < points; point++) {
    writeGap(gaps, point, dot(lifted, 0, elements.shapes, point * count, count), softness);
  }
  const matrix = new Float64Array(size * band);
  addConductances(film, gaps.heights, (leastGapOfLift * lift) ** 3, matrix);
  const pressure = new Float64Array(size);
  const edgeGaps = newGaps(edges.length);
  const edgeSlopes = new Float64Array(edges.length);
  const conductances = new Float64Array(edges.length);
  edges.forEach((edge, index) => {
    writeGap(edgeGaps, index, dot(lifted, 0, edge.shapes, 0, count), softness);
    const { value, slope } = edgeConductance(shape, edge.atHole, edgeGaps.heights[index]!);
    edgeSlopes[index] = slope * edgeGaps.slopes[index]! * edge.length;
    conductances[index] = value * edge.length;
    addEdge(edge, value * edge.length, band, matrix, pressure);
  });
  factorBand(matrix, size, band);
  solveBand(matrix, size, band, pressure);
  let flow = 0;
  edges.forEach((edge, index) => {
    if (edge.atHole) flow += conductances[index]! * (1 - edgePressure(edge, pressure));
  });
  const load = new Float64Array(count);
  for (let i = 0; i < count; i++) load[i] = dot(film.nodeLoads, i * size, pressure, 0, size);
  return { factor: matrix, pressure, gaps, edgeSlopes, flow, load };
}

/** Pressure of the film at an edge. */
export function edgePressure(edge: FilmEdge, pressure: Float64Array): number {
  return edge.nodes.reduce((sum, node, i) => sum + pressure[node]! * edge.values[i]!, 0);
}
