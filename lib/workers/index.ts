export { DashpotError } from '../base/dashpot-error.js';
export { InputError, type Limits } from '../base/input-error.js';
export { type DecisionWorkers, startDecisionWorkers } from './decision-workers.js';
