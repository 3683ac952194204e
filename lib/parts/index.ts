export { nearNames } from './near-names.js';
export type {
  Build,
  OilPart,
  Parts,
  PistonPart,
  Price,
  ShockInside,
  ShockPart,
  ShockPartLengths,
  SpringPart,
} from './parts.js';
export { PartsFileError, type PartsFileProblem } from './parts-file-error.js';
export { partsJsonSchema } from './parts-json-schema.js';
export { readParts } from './read-parts.js';
