// The main job, for pistons with straight sharp holes. `dashpot/piston` holds the rest of flow and damper under the same names.
export { InputError } from './base/input-error.js';
export type { Warning } from './base/warning.js';
export {
  creepingDampingCoefficient,
  type Damper,
  type DamperForce,
  type DamperModel,
  damperForce,
  type ForceVelocityCurve,
  forceVelocityCurve,
  type GasLayout,
  type GasSide,
  gasPressure,
  type SealFriction,
  type ShaftMotion,
  sealFrictionForce,
} from './damper/index.js';
export { plainDamperModel as damperModel } from './damper/plain-damper-model.js';
export {
  type Hole,
  type HoleGroup,
  type HoleLaw,
  type HolePath,
  type HoleResistance,
  holeArea,
  holeFlow,
  holePressureDrop,
  holeReynoldsNumber,
  type Piston,
  type PistonFlow,
  type PistonPressureDrop,
  sharpHoleLaw,
} from './flow/index.js';
export { plainPistonFlow as pistonFlow } from './flow/piston/plain-piston-flow.js';
export {
  createOil,
  type FluidState,
  fluidAt,
  type Oil,
  type OilBase,
  type OilDefinition,
  type OilState,
  type ViscosityDefinition,
  type ViscosityLine,
  type ViscosityPoint,
  viscosityAt,
} from './fluid/index.js';
export { ConvergenceError } from './numeric/root-finding.js';
