import { gaussLegendre } from '../../numeric/gauss-legendre.js';
import { inverseMatrix } from '../../numeric/inverse-matrix.js';
import { addScaled, dot } from '../../numeric/vectors.js';
import { bendingStiffness } from './bending.js';
import { clampedPolynomial, type DeflectionModes, deflectionModes, radialModes } from './deflection-modes.js';
import { type DiscShape, sectorAngle } from './disc-shape.js';
import { type AddStretching, stretching } from './stretching.js';

/** A disc without the oil under it. */
export interface Plate {
  readonly shape: DiscShape;
  readonly modes: DeflectionModes;
  readonly bending: Float64Array;
  readonly addStretching: AddStretching;
  /** Shapes over the centre of a hole, where the lift counts. */
  readonly atHole: Float64Array;
  /** Load of a ring on the pitch circle. */
  readonly ring: Float64Array;
  /** Load on each shape by pressure 1 in half a hole. */
  readonly holeLoad: Float64Array;
}

/** Load on each shape of the disc by pressure 1 in half a hole. */
function holeLoad({ pitchRadius, holeRadius }: DiscShape, modes: DeflectionModes): Float64Array {
  const load = new Float64Array(modes.count);
  const outwards = gaussLegendre(4);
  const round = gaussLegendre(8);
  const shapes = new Float64Array(modes.count);
  outwards.places.forEach((part, i) => {
    round.places.forEach((turn, j) => {
      const [radius, angle] = [part * holeRadius, turn * Math.PI];
      const [real, imaginary] = [pitchRadius + radius * Math.cos(angle), radius * Math.sin(angle)];
      modes.write(Math.hypot(real, imaginary), Math.atan2(imaginary, real), shapes, 0);
      const area = outwards.weights[i]! * round.weights[j]! * holeRadius * radius * Math.PI;
      addScaled(load, 0, shapes, 0, modes.count, area);
    });
  });
  return load;
}

/** Prepares a disc. */
export function preparePlate(shape: DiscShape): Plate {
  const modes = deflectionModes(shape);
  const atHole = new Float64Array(modes.count);
  modes.write(shape.pitchRadius, 0, atHole, 0);
  const ring = new Float64Array(modes.count);
  const x = (shape.pitchRadius - shape.clampRadius) / (1 - shape.clampRadius);
  for (let order = 0; order < radialModes; order++) {
    ring[order] = clampedPolynomial(2, order, x)[0] * shape.pitchRadius * sectorAngle(shape);
  }
  return {
    shape,
    modes,
    bending: bendingStiffness(shape, modes),
    addStretching: stretching(shape, modes),
    atHole,
    ring,
    holeLoad: holeLoad(shape, modes),
  };
}

/** A bent disc and the pressure that bends it, over `D t/a⁴`. */
export interface BentDisc {
  readonly deflection: Float64Array;
  readonly pressure: number;
}

/** Elastic force on each shape, with room for the lift; its tangent goes into one bordered by the lift. */
export function elasticForce(plate: Plate, deflection: Float64Array, tangent?: Float64Array): Float64Array {
  const { modes, bending, addStretching, atHole } = plate;
  const { count } = modes;
  const force = new Float64Array(count + 1);
  for (let i = 0; i < count; i++) force[i] = dot(bending, i * count, deflection, 0, count);
  if (tangent === undefined) {
    addStretching(deflection, force);
    return force;
  }
  const stiffness = bending.slice();
  addStretching(deflection, force, stiffness);
  for (let i = 0; i < count; i++) {
    addScaled(tangent, i * (count + 1), stiffness, i * count, count, 1);
    tangent[count * (count + 1) + i] = atHole[i]!;
  }
  return force;
}

/** Balance against a load whose distribution does not change: a ring, or oil in the holes alone under a tight seat. */
export function bendByLoad(plate: Plate, load: Float64Array, deflectionAtHole: number): BentDisc {
  const { count } = plate.modes;
  const size = count + 1;
  const deflection = new Float64Array(count);
  let pressure = 0;
  // Stretching stiffens with the square of the deflection: in steps that Newton can take.
  const steps = Math.ceil(2 * deflectionAtHole) + 1;
  for (let step = 1; step <= steps; step++) {
    const target = (deflectionAtHole * step) / steps;
    for (let iteration = 0; iteration < 12; iteration++) {
      const tangent = new Float64Array(size * size);
      const missed = elasticForce(plate, deflection, tangent);
      for (let i = 0; i < count; i++) tangent[i * size + count] = -load[i]!;
      addScaled(missed, 0, load, 0, count, -pressure);
      missed[count] = dot(plate.atHole, 0, deflection, 0, count) - target;
      const inverse = inverseMatrix(tangent, size);
      let change = 0;
      for (let i = 0; i < size; i++) {
        const move = -dot(inverse, i * size, missed, 0, size);
        if (i < count) {
          deflection[i] = deflection[i]! + move;
          change = Math.max(change, Math.abs(move));
        } else pressure += move;
      }
      if (change <= 1e-9 * target) break;
    }
  }
  return { deflection, pressure };
}

/** Pressure on the holes alone that bends a disc by its preload over their centres, over `D t/a⁴`: the seat is tight up to then. */
export function openingPressure(plate: Plate): number {
  const { preload } = plate.shape;
  return preload > 0 ? bendByLoad(plate, plate.holeLoad, preload).pressure : 0;
}
