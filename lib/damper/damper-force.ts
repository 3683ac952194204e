import { requireFinite } from '../base/checks.js';
import type { Warning } from '../base/warning.js';
import { requirePosition, type ShaftMotion } from './damper.js';
import type { DamperModel } from './damper-model.js';
import { damperWarnings } from './damper-warnings.js';
import { gasPressure } from './gas.js';
import { sealFrictionForce } from './seal-friction.js';

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
  /** Part of the force that the oil makes [N]: pressure drop on the damping area, and rim drag. */
  readonly dampingForce: number;
  /** Part that the gas makes by pressing on the shaft [N]. */
  readonly gasForce: number;
  /** Part that the seals make [N]. */
  readonly sealForce: number;
  /** Damping force per speed [N·s/m]; at rest its creeping limit. */
  readonly dampingCoefficient: number;
  /** Pressure drop over the piston [Pa], with the sign of the speed. */
  readonly pressureDrop: number;
  /** Lowest absolute pressure in the oil next to the piston [Pa]; below 0 the oil would have torn. */
  readonly lowestPressure: number;
  /** Largest Reynolds number of the holes. */
  readonly holeReynoldsNumber: number;
  /** Largest shear rate at a hole wall [1/s], of a parabolic profile, `8 V/d`. */
  readonly wallShearRate: number;
  /** Part of the flow that leaks past the rim, 0 to 1. */
  readonly leakShare: number;
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
  const { damper, fluid, pistonFlow, dampingArea, shaftArea, skirtDrag } = model;
  const { speed, position } = motion;
  requireFinite(speed, 'speed', 'm/s');
  requirePosition(position, damper.stroke);

  const flow = dampingArea * speed;
  const { pressureDrop, holeSpeeds } = pistonFlow.pressureDrop(flow);
  const dampingForce = dampingArea * pressureDrop + skirtDrag * speed;
  const gas = gasPressure(damper.gas, shaftArea * position);
  const gasForce = shaftArea * (gas - damper.gas.ambientPressure);
  const sealForce = sealFrictionForce(damper.seal, speed);

  let holeReynoldsNumber = 0;
  let wallShearRate = 0;
  for (const [index, { diameter }] of pistonFlow.paths.entries()) {
    const holeSpeed = Math.abs(holeSpeeds[index] ?? 0);
    holeReynoldsNumber = Math.max(holeReynoldsNumber, (holeSpeed * diameter) / fluid.kinematicViscosity);
    wallShearRate = Math.max(wallShearRate, (8 * holeSpeed) / diameter);
  }
  // The blind side keeps the gas pressure, so that only compression lowers a pressure: that of the shaft side.
  const lowestPressure = gas - Math.max(pressureDrop, 0);
  return {
    speed,
    force: dampingForce + gasForce + sealForce,
    dampingForce,
    gasForce,
    sealForce,
    dampingCoefficient: speed === 0 ? creepingDampingCoefficient(model) : dampingForce / speed,
    pressureDrop,
    lowestPressure,
    holeReynoldsNumber,
    wallShearRate,
    leakShare: leakShare(model, flow, pressureDrop),
    warnings: damperWarnings(model, { holeReynoldsNumber, wallShearRate, lowestPressure }),
  };
}

function leakShare({ pistonFlow }: DamperModel, flow: number, pressureDrop: number): number {
  const { gapConductance, creepingConductance } = pistonFlow;
  return flow === 0 ? gapConductance / creepingConductance : (gapConductance * pressureDrop) / flow;
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
