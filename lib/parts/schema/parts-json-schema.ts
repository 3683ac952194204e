import * as z from 'zod/mini';
import { fieldHelp } from './field-help.js';
import { fileSchema } from './file-schema.js';

/**
 * JSON Schema (draft 7) of a parts file, for an editor that checks and completes while one types.
 *
 * It knows keys, types, units and counts; ranges, references and fits are checked by `readParts` only.
 *
 * @public
 */
export function partsJsonSchema(): Readonly<Record<string, unknown>> {
  const schema = z.toJSONSchema(fileSchema, { io: 'input', target: 'draft-07', metadata: fieldHelp });
  return schema as Readonly<Record<string, unknown>>;
}
