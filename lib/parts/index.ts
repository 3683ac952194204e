export { DashpotError } from '../base/dashpot-error.js';
export { InputError, type Limits } from '../base/input-error.js';
export {
  type AssembledShock,
  assembleShock,
  type KnownOfShock,
} from './assembly/assembled-shock.js';
export { benchSteps } from './assembly/bench-steps.js';
export type { ClosingHabit } from './assembly/closing-habit.js';
export type { FillChoices } from './assembly/closing-of.js';
export { damperForAnyOil } from './assembly/damper-for-any-oil.js';
export { lengthsOf } from './assembly/lengths-of.js';
export { ShockFault } from './assembly/shock-fault.js';
export type {
  Build,
  CornerOfCar,
  DynoPart,
  MeasuredValues,
  MeasurementPart,
  OilPart,
  Parts,
  PartTolerances,
  PistonPart,
  Price,
  RecordedStroke,
  ShopOil,
  SpringPart,
  TimedShockPart,
} from './parts.js';
export { readParts } from './read-parts.js';
export { readShock, type ShockOfFile } from './read-shock.js';
export { partsJsonSchema } from './schema/parts-json-schema.js';
export { readDay } from './schema/read-day.js';
export type {
  ClosingPart,
  CompensatorKind,
  CompensatorPart,
  SealInterval,
  ShockInside,
  ShockPart,
  ShockPartLengths,
} from './shock-part.js';
export { nearNames } from './source/near-names.js';
export { PartsFileError, type PartsFileProblem } from './source/parts-file-error.js';
export { type ForceGrid, type ForceTable, forceTable } from './table/force-table.js';
export { forceTableCsv, forceTableModelica } from './table/force-table-text.js';
