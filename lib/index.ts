export { InputError } from './base/input-error.js';
export { ConvergenceError } from './base/root-finding.js';
export type { Warning } from './base/warning.js';
export * from './damper/index.js';
export * from './flow/index.js';
export {
  createOil,
  type FluidState,
  fluidAt,
  type MeasuredThinning,
  type Oil,
  type OilBase,
  type OilDefinition,
  type OilState,
  type ShearThinning,
  temperatureAt,
  type ViscosityDefinition,
  type ViscosityLine,
  type ViscosityPoint,
  viscosityAt,
  viscosityRatio,
} from './fluid/index.js';
