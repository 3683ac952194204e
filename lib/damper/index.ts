export {
  type CavitationLimit,
  cavitationLimit,
  gasPressureAgainstCavitation,
} from './cavitation-limit.js';
export type { Damper, ShaftMotion } from './damper.js';
export { creepingDampingCoefficient, type DamperForce, damperForce } from './damper-force.js';
export { type DamperModel, damperModel } from './damper-model.js';
export { type ForceVelocityCurve, forceVelocityCurve, symmetricSpeeds } from './force-velocity.js';
export { type GasLayout, type GasSide, gasPressure } from './gas.js';
export { type OilForce, oilForce } from './oil-force.js';
export { packSpeed } from './pack-speed.js';
export { type SealFriction, sealFrictionForce } from './seal-friction.js';
export { type ValveOpening, valveOpenings } from './valve-opening.js';
