export { InputError } from '../base/input-error.js';
export type { Warning } from '../base/warning.js';
export * from '../damper/index.js';
export * from '../flow/index.js';
export type { FluidState, ShearThinning } from '../fluid/index.js';
export { ConvergenceError } from '../numeric/root-finding.js';
