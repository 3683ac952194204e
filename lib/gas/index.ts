export type { Compensator, GasSide } from './compensator.js';
export { type Gas, type GasClosing, type GasLayout, sealedGas } from './gas.js';
export type { GasRoom } from './gas-room.js';
export { displacedVolumeAt, type GasCondition, type GasState, gasPressure, gasState } from './gas-state.js';
export { HydraulicLock } from './hydraulic-lock.js';
export { pocketExponent, polytropicExponent } from './polytropic-exponent.js';
export { standingGas } from './standing-gas.js';
