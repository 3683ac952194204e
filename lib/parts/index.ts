export { DashpotError } from '../base/dashpot-error.js';
export { InputError, type Limits } from '../base/input-error.js';
export type { Warning } from '../base/warning.js';
export { type WarningCode, warningCodes } from '../base/warning-codes.js';
export type { Damper } from '../damper/damper.js';
export type { SealFriction } from '../damper/seal-friction.js';
export type { DayTemperature } from '../decisions/day/day-plan.js';
export type { ShockChamber } from '../fill/chamber/chamber.js';
export type { ClosedShock, Closing } from '../fill/chamber/closed-shock.js';
export type { ShockLengths } from '../fill/length/shock-length.js';
export type { DiscValve } from '../flow/geometry/disc-valve.js';
export type { HoleEdge, HoleShape } from '../flow/geometry/hole-shape.js';
export type { HoleGroup, Piston } from '../flow/geometry/piston.js';
export type { Oil } from '../fluid/oil/oil.js';
export type {
  MeasuredThinning,
  OilBase,
  OilDefinition,
  ViscosityDefinition,
} from '../fluid/oil/oil-definition.js';
export type { ShearThinning } from '../fluid/shear/thinning-viscosity.js';
export type { SiliconeLine } from '../fluid/viscosity/barry-silicone.js';
export type { ViscosityLine } from '../fluid/viscosity/viscosity-line.js';
export type { ViscosityPoint } from '../fluid/viscosity/viscosity-point.js';
export type { WaltherLine } from '../fluid/viscosity/walther-line.js';
export type { Compensator, GasSide } from '../gas/compensator.js';
export type { Gas, GasClosing, GasLayout } from '../gas/gas.js';
export type { GasRoom } from '../gas/gas-room.js';
export type { DynoSetup } from '../measure/dyno/dyno-readings.js';
export type { RecordedCourse } from '../measure/dyno/read-course.js';
export type { DynoRecord } from '../measure/dyno/read-dyno.js';
export type {
  DensityReading,
  DropReading,
  ForceReading,
  HoleReading,
  Reading,
  ScaleReading,
  Timing,
  ViscosityReading,
} from '../measure/reading/reading.js';
export type { Cushion } from '../motion/corner/contact.js';
export type { Corner } from '../motion/corner/corner.js';
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
export type { CourseKey } from './course-entry.js';
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
