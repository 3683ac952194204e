import * as z from 'zod/mini';

/** What the JSON Schema says of a field beyond its type, so that an editor can help; keys as in JSON Schema. */
export interface FieldHelp {
  readonly description: string;
  readonly title?: string;
  readonly examples?: readonly unknown[];
  readonly default?: unknown;
  readonly type?: string;
  readonly pattern?: string;
  readonly minLength?: number;
  readonly maxLength?: number;
  readonly minimum?: number;
  readonly maximum?: number;
  readonly oneOf?: readonly { readonly required: readonly string[] }[];
}

/** Help texts by schema, kept beside the schemas and used only by `partsJsonSchema`. */
export const fieldHelp = z.registry<FieldHelp>();
