import { solveBand } from '../../numeric/banded-cholesky.js';
import { inverseMatrix } from '../../numeric/inverse-matrix.js';
import { addScaled, dot } from '../../numeric/vectors.js';
import { edgePressure, type Film, type SolvedFilm, solveFilm } from './film.js';
import { nodesPerElement } from './film-elements.js';
import { type BentDisc, elasticForce, type Plate } from './plate.js';

/** A disc and the film under it. */
export interface Disc extends Plate {
  readonly film: Film;
}

/** A disc afloat on its film. */
export interface FloatingDisc extends BentDisc {
  readonly solved: SolvedFilm;
  /** Force of the seat on half a sector, over `D t/a²`. */
  readonly contact: number;
}

/**
 * Softness of the seat, and depth to which the pressure under the disc presses the disc into it, over the lift. A lone hole lifts one side of its
 * disc and presses the other far round onto the seat: there ten times as soft.
 */
const contactOf = (holes: number) =>
  holes > 1 ? { softness: 0.01, depth: 0.02 } : { softness: 0.05, depth: 0.1 };

/** Newton stops after a step of this part of the lift; the step before the last left its square. */
const settled = 3e-4;

/**
 * Balances the disc at a lift over its holes: shapes and pressure are the unknowns. Newton, kept from leaping, with the film's answer to each
 * shape in the tangent. A tangent is
 * kept and learns from each step (Broyden), as long as the steps shrink.
 *
 * @param seat - the disc at rest on its seat
 * @param start - a neighbouring balance
 * @param lift - over the seat at the centre of a hole, over the thickness
 * @returns nothing where 30 steps do not get there
 */
export function floatDisc(
  disc: Disc,
  seat: Float64Array,
  start: BentDisc,
  lift: number,
): FloatingDisc | undefined {
  // Where the disc comes to lie on its seat, what a tangent has learnt may mislead.
  return balance(disc, seat, start, lift, true) ?? balance(disc, seat, start, lift, false);
}

function balance(
  disc: Disc,
  seat: Float64Array,
  start: BentDisc,
  lift: number,
  learning: boolean,
): FloatingDisc | undefined {
  const { count } = disc.modes;
  const size = count + 1;
  const deflection = start.deflection.slice();
  let { pressure } = start;
  const contact = contactOf(disc.shape.holes);
  const stiffness = start.pressure / (contact.depth * lift);
  const softness = contact.softness * lift;
  const scale = lift + disc.shape.preload;
  let inverse: Float64Array | undefined;
  let before: { readonly move: Float64Array; readonly missed: Float64Array } | undefined;
  let last = Number.POSITIVE_INFINITY;
  for (let step = 0; step < 30; step++) {
    const lifted = deflection.slice();
    addScaled(lifted, 0, seat, 0, count, -1);
    const solved = solveFilm(disc.film, lifted, softness, lift);
    const tangent = inverse === undefined ? new Float64Array(size * size) : undefined;
    const missed = elasticForce(disc, deflection, tangent);
    const load = solved.load;
    addScaled(load, 0, disc.holeLoad, 0, count, 1);
    addScaled(missed, 0, load, 0, count, -pressure);
    const push = addContact(disc.film, solved, stiffness, missed, tangent);
    missed[count] = dot(disc.atHole, 0, lifted, 0, count) - lift;
    if (tangent !== undefined) {
      for (let i = 0; i < count; i++) tangent[i * size + count] = -load[i]!;
      addFilmResponse(disc.film, solved, pressure, tangent);
      inverse = inverseMatrix(tangent, size);
    } else if (inverse !== undefined && before !== undefined) {
      learn(inverse, size, before, missed);
    }
    if (inverse === undefined) return undefined;
    const move = new Float64Array(size);
    let change = 0;
    for (let i = 0; i < size; i++) {
      move[i] = -dot(inverse, i * size, missed, 0, size);
      if (i < count) change = Math.max(change, Math.abs(move[i]!));
    }
    if (!Number.isFinite(change)) return undefined;
    if (change < settled * scale) return { deflection, pressure, solved, contact: push };
    // Where contact comes and goes, half of a growing step.
    const part = Math.min(change > last ? 0.5 : 1, (0.5 * scale) / change);
    if (!learning || change > last) inverse = undefined;
    last = change;
    for (let i = 0; i < size; i++) move[i] = part * move[i]!;
    addScaled(deflection, 0, move, 0, count, 1);
    pressure += move[count]!;
    before = { move, missed };
  }
  return undefined;
}

/**
 * Broyden's update of an inverse tangent by what a step has changed.
 *
 * @see Broyden, Math. Comput. 19 (1965) 577, the first method (from memory)
 */
function learn(
  inverse: Float64Array,
  size: number,
  before: { readonly move: Float64Array; readonly missed: Float64Array },
  missed: Float64Array,
): void {
  const { move } = before;
  const foreseen = new Float64Array(size);
  const backwards = new Float64Array(size);
  for (let i = 0; i < size; i++) {
    let sum = 0;
    for (let j = 0; j < size; j++) {
      sum += inverse[i * size + j]! * (missed[j]! - before.missed[j]!);
    }
    foreseen[i] = sum;
    addScaled(backwards, 0, inverse, i * size, size, move[i]!);
  }
  const along = dot(move, 0, foreseen, 0, size);
  if (along === 0) return;
  for (let i = 0; i < size; i++) {
    addScaled(inverse, i * size, backwards, 0, size, (move[i]! - foreseen[i]!) / along);
  }
}

/** Adds the push of the seat where the gap has shut; hands back its force. */
function addContact(
  film: Film,
  solved: SolvedFilm,
  stiffness: number,
  missed: Float64Array,
  tangent: Float64Array | undefined,
): number {
  const { count, elements } = film;
  const { slopes, overlaps } = solved.gaps;
  let force = 0;
  for (let point = 0; point < slopes.length; point++) {
    const shut = 1 - slopes[point]!;
    if (shut < 1e-9) continue;
    const area = stiffness * elements.areas[point]!;
    const push = area * overlaps[point]!;
    force += push;
    addScaled(missed, 0, elements.shapes, point * count, count, -push);
    if (tangent === undefined) continue;
    for (let i = 0; i < count; i++) {
      const factor = area * shut * elements.shapes[point * count + i]!;
      addScaled(tangent, i * (count + 1), elements.shapes, point * count, count, factor);
    }
  }
  return force;
}

/** Adds how the load of the film answers to each shape. */
function addFilmResponse(film: Film, solved: SolvedFilm, pressure: number, tangent: Float64Array): void {
  const { count, size, band, elements, edges } = film;
  const { nodes, products, shapes } = elements;
  const { heights, slopes } = solved.gaps;
  const local = new Float64Array(nodesPerElement);
  // How far each shape upsets the balance of each node's flow.
  const upset = new Float64Array(count * size);
  for (let point = 0; point < heights.length; point++) {
    const first = Math.floor(point / nodesPerElement) * nodesPerElement;
    for (let i = 0; i < nodesPerElement; i++) local[i] = solved.pressure[nodes[first + i]!]!;
    const weight = -3 * heights[point]! ** 2 * slopes[point]!;
    for (let i = 0; i < nodesPerElement; i++) {
      const at = (point * nodesPerElement + i) * nodesPerElement;
      const flux = weight * dot(products, at, local, 0, nodesPerElement);
      const node = nodes[first + i]!;
      for (let j = 0; j < count; j++) {
        const slot = j * size + node;
        upset[slot] = upset[slot]! + flux * shapes[point * count + j]!;
      }
    }
  }
  edges.forEach((edge, index) => {
    const drop = (edge.atHole ? 1 : 0) - edgePressure(edge, solved.pressure);
    const flux = solved.edgeSlopes[index]! * drop;
    edge.nodes.forEach((node, i) => {
      const part = flux * edge.values[i]!;
      for (let j = 0; j < count; j++) {
        upset[j * size + node] = upset[j * size + node]! + part * edge.shapes[j]!;
      }
    });
  });
  for (let j = 0; j < count; j++) {
    solveBand(solved.factor, size, band, upset, j * size);
    for (let i = 0; i < count; i++) {
      const at = i * (count + 1) + j;
      tangent[at] = tangent[at]! - pressure * dot(film.nodeLoads, i * size, upset, j * size, size);
    }
  }
}
