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
export { readParts } from './read-parts.js';
export { partsJsonSchema } from './schema/parts-json-schema.js';
export { readDay } from './schema/read-day.js';
export { nearNames } from './source/near-names.js';
export { PartsFileError, type PartsFileProblem } from './source/parts-file-error.js';
