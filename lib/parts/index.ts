export { nearNames } from './near-names.js';
export type { Build, OilPart, Parts, PistonPart, Price, ShockPart, SpringPart } from './parts.js';
export { PartsFileError, type PartsFileProblem } from './parts-file-error.js';
export { partsJsonSchema } from './parts-json-schema.js';
export { readParts } from './read-parts.js';
