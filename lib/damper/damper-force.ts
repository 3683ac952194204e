import { requireFinite } from '../base/checks.js';
import type { Warning } from '../base/warning.js';
import { requirePosition, type ShaftMotion } from './damper.js';
import type { DamperModel } from './damper-model.js';
import { damperWarnings } from './damper-warnings.js';
import { compressedGasPressure } from './gas.js';
import { type OilForce, oilForce } from './oil-force.js';
import { pressureDropLimitAt } from './pressure-drop-limit.js';
import { sealFrictionForce } from './seal-friction.js';

/** Specific heat capacity of a silicone oil [J/(kg·K)]; 1460 to 1550 is usual, petroleum oil has about 1900 (from memory). */
const specificHeatCapacity = 1500;

/**
 * What a damper does at one speed and position. Compression is positive; a positive force pushes the shaft out.
 *
 * @public
 */
export interface DamperForce {
  /** Shaft speed [m/s]. */
  readonly speed: number;
  /** Force of the shaft on what it pushes [N]: damping, gas and seals. */
  readonly force: number;
  /** Part of the force that the oil makes [N]: pressure drop on the damping area less the recoil of the jets, and rim drag. */
  readonly dampingForce: number;
  /** Part that the gas makes by pressing on the shaft [N]. */
  readonly gasForce: number;
  /** Part that the seals make [N]. */
  readonly sealForce: number;
  /** Damping force per speed [N·s/m]; at rest its creeping limit. */
  readonly dampingCoefficient: number;
  /** Pressure drop over the piston [Pa], with the sign of the speed. */
  readonly pressureDrop: number;
  /** Lowest absolute pressure in the oil next to the piston [Pa]; it never falls below the air-release pressure. */
  readonly lowestPressure: number;
  /** Whether the oil behind the piston tears, so that pressure drop and force stay where they are. */
  readonly cavitating: boolean;
  /** How fast the cavity grows while the oil tears [m³/s]; what happens to it over a stroke is no part of a steady curve. */
  readonly cavityGrowth: number;
  /** Part of the pressure force that the jets take back [N], 0 or more; already taken off the damping force. */
  readonly jetRecoil: number;
  /** How much warmer the oil leaves the holes [K], all loss turned to heat: `Δp / (ρ c)`. */
  readonly jetTemperatureRise: number;
  /** Largest Reynolds number of the holes. */
  readonly holeReynoldsNumber: number;
  /** Largest shear rate at a hole wall [1/s], of a parabolic profile, `8 V/d`. */
  readonly wallShearRate: number;
  /** Part of the flow that leaks past the rim, 0 to 1. */
  readonly leakShare: number;
  /** Steps of the pressure solver. */
  readonly iterations: number;
  /** Flow that the solved pressure drop passes, less the flow asked for [m³/s]. */
  readonly residual: number;
  readonly warnings: readonly Warning[];
}

/**
 * Force of a damper at a shaft speed and position.
 *
 * @param model - from {@link damperModel}
 * @param motion - speed [m/s], either sign; position [m], 0 to the stroke
 * @throws InputError where the speed is not finite, the position is outside the stroke, or the gas has no room left
 * @public
 */
export function damperForce(model: DamperModel, motion: ShaftMotion): DamperForce {
  const { speed, position } = motion;
  requireFinite(speed, 'speed', 'm/s');
  requirePosition(position, model.damper.stroke);
  const gas = compressedGasPressure(model.damper.gas, model.shaftArea * position);
  const largestDrop = pressureDropLimitAt(model, gas, speed);
  return assembleForce(model, speed, { gas, largestDrop }, oilForce(model, speed, largestDrop));
}

/** What stands still at one position and direction. */
export interface Standing {
  /** Absolute gas pressure [Pa]. */
  readonly gas: number;
  /** Pressure drop at which the oil tears [Pa], above 0. */
  readonly largestDrop: number;
}

/** Everything of one force around what the oil does. */
export function assembleForce(
  model: DamperModel,
  speed: number,
  { gas, largestDrop }: Standing,
  oil: OilForce,
): DamperForce {
  const { damper, fluid, pistonFlow, shaftArea } = model;
  const { pressureDrop, cavitating, through } = oil;
  const gasForce = shaftArea * (gas - damper.gas.ambientPressure);
  const sealForce = sealFrictionForce(damper.seal, speed);

  let holeReynoldsNumber = 0;
  let wallShearRate = 0;
  // Counted, since an iterator of pairs would cost as much as the physics.
  let index = 0;
  for (const { diameter } of pistonFlow.paths) {
    const holeSpeed = Math.abs(oil.holeSpeeds[index++] ?? 0);
    holeReynoldsNumber = Math.max(holeReynoldsNumber, (holeSpeed * diameter) / fluid.kinematicViscosity);
    wallShearRate = Math.max(wallShearRate, (8 * holeSpeed) / diameter);
  }
  const behind = speed > 0 ? model.blindShare : 1 - model.blindShare;
  return {
    speed,
    force: oil.force + gasForce + sealForce,
    dampingForce: oil.force,
    gasForce,
    sealForce,
    dampingCoefficient: speed === 0 ? creepingDampingCoefficient(model) : oil.force / speed,
    pressureDrop,
    lowestPressure: gas - behind * Math.abs(pressureDrop),
    cavitating,
    cavityGrowth: Math.abs(model.dampingArea * speed - through),
    jetRecoil: oil.jetRecoil,
    jetTemperatureRise: Math.abs(pressureDrop) / (fluid.density * specificHeatCapacity),
    holeReynoldsNumber,
    wallShearRate,
    leakShare: leakShare(model, through, pressureDrop),
    iterations: oil.iterations,
    residual: oil.residual,
    warnings: damperWarnings(model, { holeReynoldsNumber, wallShearRate, cavitating, largestDrop }),
  };
}

function leakShare({ pistonFlow }: DamperModel, flow: number, pressureDrop: number): number {
  const { gapFlow, gapConductance, creepingConductance } = pistonFlow;
  return flow === 0 ? gapConductance / creepingConductance : gapFlow(pressureDrop) / flow;
}

/**
 * Damping coefficient as the speed tends to zero [N·s/m].
 *
 * @param model - from {@link damperModel}
 * @public
 */
export function creepingDampingCoefficient(model: DamperModel): number {
  return model.dampingArea ** 2 / model.pistonFlow.creepingConductance + model.skirtDrag;
}
