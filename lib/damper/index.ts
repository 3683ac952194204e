export type { Damper, ShaftMotion } from './damper.js';
export { creepingDampingCoefficient, type DamperForce, damperForce } from './damper-force.js';
export { type DamperModel, damperModel } from './damper-model.js';
export { type ForceVelocityCurve, forceVelocityCurve, symmetricSpeeds } from './force-velocity.js';
export { type GasSide, gasPressure } from './gas.js';
export { packSpeed } from './pack-speed.js';
export { type SealFriction, sealFrictionForce } from './seal-friction.js';
