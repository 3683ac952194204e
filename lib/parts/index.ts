export { nearNames } from './near-names.js';
export type {
  Build,
  Corner,
  DayReading,
  OilPart,
  Parts,
  PartTolerances,
  PistonPart,
  Price,
  ShockInside,
  ShockPart,
  ShockPartLengths,
  ShopOil,
  SpringPart,
  TimedShockPart,
} from './parts.js';
export { PartsFileError, type PartsFileProblem } from './parts-file-error.js';
export { partsJsonSchema } from './parts-json-schema.js';
export { readDay } from './read-day.js';
export { readParts } from './read-parts.js';
