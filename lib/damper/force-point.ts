import type { Warning } from '../base/warning.js';
import type { HolePath } from '../flow/hole/hole-path.js';
import type { PistonPressureDrop } from '../flow/piston/piston-pressure-drop.js';
import { shaftSidePressure } from './chamber-pressures.js';
import { requireModel } from './damper.js';
import type { DamperModel } from './damper-model.js';
import { damperWarnings } from './damper-warnings.js';
import { recoilOfHoles } from './jet-recoil.js';
import { rimForce } from './oil-force.js';
import { frictionAt } from './seal-friction.js';

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
  /** Part of the force that the oil makes [N]: pressure drop on the piston less the recoil of the jets, and rim drag. */
  readonly dampingForce: number;
  /** Part that the gas makes by pressing on the shaft [N]. */
  readonly gasForce: number;
  /** Part that the seals make [N]. */
  readonly sealForce: number;
  /** Damping force per speed [N·s/m]; at rest its creeping limit. */
  readonly dampingCoefficient: number;
  /** Pressure on the blind side of the piston less that on the shaft side [Pa]. */
  readonly pressureDrop: number;
  /** Absolute pressure of the gas [Pa]. */
  readonly gasPressure: number;
  /** Lowest absolute pressure in the oil next to the piston [Pa]: the air-release pressure where a cavity opens. */
  readonly lowestPressure: number;
  /**
   * Whether the speed is beyond the onset of cavitation, or a cavity is open. Without an open cavity the force is then that of oil held whole by more gas:
   * the damping force is near the one that a long stroke tends to.
   */
  readonly cavitating: boolean;
  /** Volume of the cavity [m³], 0 while the oil is whole. */
  readonly cavityVolume: number;
  /** Part of the pressure force that the jets take back [N], with the sign of the flow; already taken off the damping force. */
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
  /** What is doubtful about the force; worked out when it is read. */
  readonly warnings: readonly Warning[];
}

/** The numbers of a force, without what is doubtful about it. */
type Numbers = Omit<DamperForce, 'warnings'>;

/**
 * One computed force. A class, so that warnings, which cost more than the force, are built only where somebody reads them. Its constructor does nothing
 * but write: so V8 makes the whole object at once.
 */
class ForcePoint implements DamperForce {
  declare readonly speed: number;
  declare readonly force: number;
  declare readonly dampingForce: number;
  declare readonly gasForce: number;
  declare readonly sealForce: number;
  declare readonly dampingCoefficient: number;
  declare readonly pressureDrop: number;
  declare readonly gasPressure: number;
  declare readonly lowestPressure: number;
  declare readonly cavitating: boolean;
  declare readonly cavityVolume: number;
  declare readonly jetRecoil: number;
  declare readonly jetTemperatureRise: number;
  declare readonly holeReynoldsNumber: number;
  declare readonly wallShearRate: number;
  declare readonly leakShare: number;
  declare readonly iterations: number;
  declare readonly residual: number;
  readonly #model: DamperModel;

  constructor(model: DamperModel, numbers: Numbers) {
    this.#model = model;
    this.speed = numbers.speed;
    this.force = numbers.force;
    this.dampingForce = numbers.dampingForce;
    this.gasForce = numbers.gasForce;
    this.sealForce = numbers.sealForce;
    this.dampingCoefficient = numbers.dampingCoefficient;
    this.pressureDrop = numbers.pressureDrop;
    this.gasPressure = numbers.gasPressure;
    this.lowestPressure = numbers.lowestPressure;
    this.cavitating = numbers.cavitating;
    this.cavityVolume = numbers.cavityVolume;
    this.jetRecoil = numbers.jetRecoil;
    this.jetTemperatureRise = numbers.jetTemperatureRise;
    this.holeReynoldsNumber = numbers.holeReynoldsNumber;
    this.wallShearRate = numbers.wallShearRate;
    this.leakShare = numbers.leakShare;
    this.iterations = numbers.iterations;
    this.residual = numbers.residual;
  }

  get warnings(): readonly Warning[] {
    return damperWarnings(this.#model, this);
  }
}

/**
 * What a damper does where the flow through its piston is solved.
 *
 * @param gasPressure - [Pa]
 * @param lowestPressure - [Pa]
 * @param cavityVolume - [m³]
 * @param flow - through piston and gap [m³/s]
 * @param solved - pressure drop and speeds in the holes
 */
export function forceOfFlow(
  model: DamperModel,
  speed: number,
  gasPressure: number,
  lowestPressure: number,
  cavitating: boolean,
  cavityVolume: number,
  flow: number,
  solved: PistonPressureDrop,
): DamperForce {
  const { pressureDrop, holeSpeeds, iterations, residual } = solved;
  const { damper, fluid } = model;
  const { paths } = model.pistonFlow;
  const recoil = recoilOfHoles(model, holeSpeeds, flow);
  const dampingForce = pressureForce(model, gasPressure, pressureDrop) - recoil + rimForce(model, speed);
  const gasForce = model.shaftArea * (gasPressure - damper.gas.ambientPressure);
  const sealForce = frictionAt(damper.seal, speed);
  let holeReynoldsNumber = 0;
  let wallShearRate = 0;
  // Counted, since an iterator would cost as much as the physics.
  for (let index = 0; index < paths.length; index++) {
    const { diameter } = paths[index] as HolePath;
    const holeSpeed = Math.abs(holeSpeeds[index] ?? 0);
    holeReynoldsNumber = Math.max(holeReynoldsNumber, (holeSpeed * diameter) / fluid.kinematicViscosity);
    wallShearRate = Math.max(wallShearRate, (8 * holeSpeed) / diameter);
  }
  return new ForcePoint(model, {
    speed,
    force: dampingForce + gasForce + sealForce,
    dampingForce,
    gasForce,
    sealForce,
    // So slow that its square is no number more, a shaft stands still.
    dampingCoefficient: speed * speed > 0 ? dampingForce / speed : creepingDamping(model),
    pressureDrop,
    gasPressure,
    lowestPressure,
    cavitating,
    cavityVolume,
    jetRecoil: recoil,
    jetTemperatureRise: Math.abs(pressureDrop) / (fluid.density * specificHeatCapacity),
    holeReynoldsNumber,
    wallShearRate,
    leakShare: leakShare(model, flow, pressureDrop),
    iterations,
    residual,
  });
}

/** What the pressures on both faces make beyond the gas on the shaft [N]. */
function pressureForce(model: DamperModel, gasPressure: number, pressureDrop: number): number {
  if (model.blindShare !== 0.5) return model.dampingArea * pressureDrop;
  const onShaftSide = shaftSidePressure(model, gasPressure, pressureDrop);
  return model.pistonArea * pressureDrop + model.shaftArea * (onShaftSide - gasPressure);
}

function leakShare({ pistonFlow }: DamperModel, flow: number, pressureDrop: number): number {
  const { gapFlow, gapConductance, creepingConductance } = pistonFlow;
  return flow === 0 ? gapConductance / creepingConductance : gapFlow(pressureDrop) / flow;
}

/**
 * Damping coefficient as the speed tends to zero [N·s/m].
 *
 * @param model - from `damperModel`
 * @example
 * ```ts
 * // model: of the example of damperModel
 * creepingDampingCoefficient(model); // 181.7: A²/G + π μ D L/h, by hand
 * ```
 * @public
 */
export function creepingDampingCoefficient(model: DamperModel): number {
  requireModel(model);
  return creepingDamping(model);
}

/** {@link creepingDampingCoefficient} of what was checked before. */
export function creepingDamping(model: DamperModel): number {
  const { creepingConductance, paths } = model.pistonFlow;
  const dropPerSpeed = model.dampingArea / creepingConductance;
  let coefficient = model.dampingArea * dropPerSpeed + model.rimDrag;
  for (const { area, resistance, creepingMomentum } of paths) {
    const holeSpeedPerSpeed = dropPerSpeed / resistance.creepingSlope;
    coefficient -= model.fluid.density * area * creepingMomentum * holeSpeedPerSpeed;
  }
  return coefficient;
}
