import type { DamperModel } from './damper-model.js';

/**
 * Momentum of a jet over `ρ V² A` of its hole, between 4/3 (parabolic) and 1 (flat); 1.19 to 1.25 in our own numerical reference
 * from Re 30 to 800.
 */
export const jetMomentum = 1.2;

/**
 * What the oil does to the piston at one speed.
 *
 * @public
 */
export interface OilForce {
  /** Force [N], with the sign of the speed: pressure on the damping area, less the recoil of the jets, plus rim drag. */
  readonly force: number;
  /** Pressure drop over the piston [Pa], with the sign of the speed. */
  readonly pressureDrop: number;
  /** Part of the pressure force that the jets take back [N], 0 or more. */
  readonly jetRecoil: number;
  /** Mean speed in the open holes of each path [m/s], with the sign of the speed. */
  readonly holeSpeeds: readonly number[];
  /** Flow through piston and gap [m³/s], with the sign of the speed; less than the piston sweeps where the oil tears. */
  readonly through: number;
  /** Whether the pressure drop is held at its limit. */
  readonly cavitating: boolean;
  /** Steps of the solver, and what its flow lacks [m³/s]. */
  readonly iterations: number;
  readonly residual: number;
}

/**
 * Recoil of the jets [N]. Far behind the piston the jets have given their momentum back as pressure; on its face it is missing. By
 * the momentum balance of the oil in the bore the force is the face pressure less `Σ ρ a V (1.2 V − U)`, with `U` the mean
 * speed in the bore; our own numerical reference agrees within 3 % of the recoil (docs/piston.md). Jets from under a disc leave
 * sideways and do not count.
 */
function jetRecoil(model: DamperModel, holeSpeeds: readonly number[], flow: number): number {
  const { bore } = model.damper;
  const boreSpeed = Math.abs(flow) / ((Math.PI / 4) * bore * bore);
  let sum = 0;
  let index = 0;
  for (const { area } of model.pistonFlow.paths) {
    const speed = Math.abs(holeSpeeds[index++] ?? 0);
    sum += area * speed * Math.max(jetMomentum * speed - boreSpeed, 0);
  }
  return model.fluid.density * sum;
}

/** The flow at which the oil behind the piston tears, with what goes with it. Compression and rebound have one each. */
export interface Tear {
  readonly pressureDrop: number;
  readonly holeSpeeds: readonly number[];
  readonly through: number;
}

/** The tear at a pressure drop [Pa], with the sign of the speed. */
export function tearAt({ pistonFlow }: DamperModel, pressureDrop: number): Tear {
  const { paths, valves, gapFlow } = pistonFlow;
  const holeSpeeds = new Array<number>(paths.length);
  let through = gapFlow(pressureDrop);
  let index = 0;
  for (const { area, resistance } of paths) {
    const speed = resistance.meanSpeed(pressureDrop);
    holeSpeeds[index++] = speed;
    through += area * speed;
  }
  for (const valve of valves) through += valve.flow(pressureDrop);
  return { pressureDrop, holeSpeeds, through };
}

/**
 * Force of the oil on the piston at a shaft speed.
 *
 * @param model - from `damperModel`
 * @param speed - shaft speed [m/s], either sign
 * @param largestDrop - pressure drop at which the oil tears [Pa]; without it the oil is taken to hold any
 * @public
 */
export function oilForce(
  model: DamperModel,
  speed: number,
  largestDrop = Number.POSITIVE_INFINITY,
): OilForce {
  const through = model.dampingArea * speed;
  const { pressureDrop, holeSpeeds, iterations, residual } = model.pistonFlow.pressureDrop(through);
  if (Math.abs(pressureDrop) > largestDrop) {
    return tornOilForce(model, speed, tearAt(model, speed < 0 ? -largestDrop : largestDrop));
  }
  return forceOf(model, speed, { pressureDrop, holeSpeeds, through }, false, iterations, residual);
}

/** Force of the oil at a speed that tears it. */
export function tornOilForce(model: DamperModel, speed: number, tear: Tear): OilForce {
  return forceOf(model, speed, tear, true, 0, 0);
}

function forceOf(
  model: DamperModel,
  speed: number,
  { pressureDrop, holeSpeeds, through }: Tear,
  cavitating: boolean,
  iterations: number,
  residual: number,
): OilForce {
  const { dampingArea, pistonFlow, skirtDrag } = model;
  const recoil = jetRecoil(model, holeSpeeds, through);
  const jets = speed < 0 ? -recoil : recoil;
  return {
    force: dampingArea * pressureDrop - jets + pistonFlow.dragViscosityRatio(speed) * skirtDrag * speed,
    pressureDrop,
    jetRecoil: recoil,
    through,
    holeSpeeds,
    cavitating,
    iterations,
    residual,
  };
}
