// The main job: oils against temperature, pistons of every kind, dampers with their gas.
export { DashpotError } from './base/dashpot-error.js';
export { InputError, type Limits } from './base/input-error.js';
export type { Warning } from './base/warning.js';
export { type WarningCode, warningCodes } from './base/warning-codes.js';
export * from './damper/index.js';
export * from './flow/index.js';
export {
  createOil,
  type FluidState,
  fluidAt,
  type Oil,
  type OilBase,
  type OilDefinition,
  type OilState,
  type ShearThinning,
  type ViscosityDefinition,
  type ViscosityLine,
  type ViscosityPoint,
  viscosityAt,
} from './fluid/index.js';
export type { MeasuredThinning } from './fluid/oil/oil-definition.js';
export type { SiliconeLine } from './fluid/viscosity/barry-silicone.js';
export type { WaltherLine } from './fluid/viscosity/walther-line.js';
export type { RestingRoom } from './gas/gas-room.js';
export * from './gas/index.js';
export { ConvergenceError } from './numeric/root-finding.js';
