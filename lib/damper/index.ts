export {
  type CavitationOnset,
  cavitationOnset,
  gasPressureAgainstCavitation,
} from './cavitation-onset.js';
export { forceWithCavity } from './cavity-force.js';
export { type Damper, requireDamper, type ShaftMotion } from './damper.js';
export { damperForce } from './damper-force.js';
export { damperForces } from './damper-forces.js';
export { bindDamper, type DamperModel, damperModel } from './damper-model.js';
export { fastestRebound, landingShaftSpeed } from './driven-speed.js';
export { forceAfterTravel, forcesAlongTravel } from './force-after-travel.js';
export { creepingDampingCoefficient, type DamperForce } from './force-point.js';
export { type ForceSlope, forceSlope } from './force-slope.js';
export { type ForceVelocityCurve, forceVelocityCurve, symmetricSpeeds } from './force-velocity.js';
export { apparentMassAtShaft, inertiaForce } from './inertia-force.js';
export { jetRecoil } from './jet-recoil.js';
export { oilForce, type PistonPassage, passageAtDrop } from './oil-force.js';
export { packSpeed } from './pack-speed.js';
export { type PlayOfPiston, playOfPiston } from './play-of-piston.js';
export { type SealFriction, sealFrictionForce } from './seal-friction.js';
export { speedsAtForce } from './speeds-at-force.js';
export { type SineStroke, type StrokeDamping, strokeDamping } from './stroke-damping.js';
export { type ValveOpening, valveOpenings } from './valve-opening.js';
