export { type DecisionWorkers, startDecisionWorkers } from './decision-workers.js';
