export { DashpotError } from '../base/dashpot-error.js';
export { InputError, type Limits } from '../base/input-error.js';
export type { Warning } from '../base/warning.js';
export { type WarningCode, warningCodes } from '../base/warning-codes.js';
export type { Damper } from '../damper/damper.js';
export type { DamperModel } from '../damper/damper-model.js';
export type { SealFriction } from '../damper/seal-friction.js';
export type { AnnularGap } from '../flow/gap/annular-gap.js';
export type { DiscValve } from '../flow/geometry/disc-valve.js';
export type { Hole } from '../flow/geometry/hole.js';
export type { HoleEdge, HoleShape } from '../flow/geometry/hole-shape.js';
export type { HoleGroup, Piston } from '../flow/geometry/piston.js';
export type { UnsteadyFlowError } from '../flow/hole/apparent-mass.js';
export type { BoundHole } from '../flow/hole/bound-hole.js';
export type { BoundLoss } from '../flow/hole/bound-loss.js';
export type { BoundBothWays, HoleLaw, HoleResistance } from '../flow/hole/hole-law.js';
export type { HolePath } from '../flow/hole/hole-path.js';
export type { Separation } from '../flow/hole/loss-shares.js';
export type { PistonFlow } from '../flow/piston/parallel-flow.js';
export type { PistonPressureDrop } from '../flow/piston/piston-pressure-drop.js';
export type { ValvePath, ValvePoint } from '../flow/valve/valve-path.js';
export type { FluidState } from '../fluid/oil/fluid-state.js';
export type { ShearThinning } from '../fluid/shear/thinning-viscosity.js';
export type { Gas, GasClosing, GasLayout } from '../gas/gas.js';
export type { GasRoom, RestingRoom } from '../gas/gas-room.js';
export type { GasState } from '../gas/gas-state.js';
export { IntegrationError } from '../numeric/integrator/integration-error.js';
export {
  type BenchResult,
  benchStroke,
  type Peak,
  type StrokeCycle,
} from './bench/bench-stroke.js';
export type { BenchStroke, RepeatedStroke, TableStroke } from './bench/stroke.js';
export { type Hysteresis, type StrokeFigures, strokeFigures } from './bench/stroke-figures.js';
export type { Trace } from './bench/trace.js';
export type { Cushion } from './corner/contact.js';
export type { Corner } from './corner/corner.js';
export type { CornerHistory } from './corner/corner-events.js';
export type { CornerOutcome } from './corner/corner-outcome.js';
export type { CornerTrace } from './corner/corner-trace.js';
export type { CornerEvent } from './corner/ground.js';
export { cornerGuesses, type Guess } from './corner/guesses.js';
export { type CornerOptions, landingSpeed, moveCorner } from './corner/move-corner.js';
export { type Air, airAt } from './heat/air.js';
export {
  type CooledBody,
  heatToAir,
  stillNusseltNumber,
  windNusseltNumber,
} from './heat/cylinder-cooling.js';
export { type RunPart, type WarmingResult, type WarmingRun, warmingRun } from './heat/warming-run.js';
export type { MotionOptions } from './input/options.js';
export { movingShock, type OilInMotion } from './shock/bind-moving-shock.js';
export { type BristleFriction, bristleForce, bristleRate } from './shock/bristle-friction.js';
export { closingSpike, holeInertance, swingingTube, tubeSettlingTime } from './shock/left-out.js';
export type { GivingGas, MovingOil, MovingShock, Passage } from './shock/moving-shock.js';
export type { CavityInterval } from './shock/oil-cavity.js';
export type { LeftOutInertia } from './shock/oil-inertia.js';
export { oilExpansion } from './shock/oil-volume.js';
