import * as z from 'zod/mini';
import { requireShape, someText } from '../base/shape.js';
import { assemble, type Remarks } from './assemble.js';
import type { PartList } from './part-list.js';
import type { Parts } from './parts.js';
import { buildSchema } from './schema/build-schema.js';
import { fileSchema } from './schema/file-schema.js';
import { measurementSchema } from './schema/measurement-schema.js';
import { oilSchema } from './schema/oil-schema.js';
import { pistonSchema } from './schema/piston-schema.js';
import { shopSchema, timedSchema } from './schema/plan-schema.js';
import { schemaFindings } from './schema/schema-issue.js';
import { shockSchema } from './schema/shock-schema.js';
import { springSchema } from './schema/spring-schema.js';
import { located } from './source/field-place.js';
import { withLineFeeds } from './source/file-text.js';
import type { Finding } from './source/finding.js';
import { PartsFileError, type PartsFileProblem } from './source/parts-file-error.js';
import { sourceFaults } from './source/source-faults.js';
import { problemAt, type SourceTree, sourceTree } from './source/source-tree.js';
import { syntaxFaults } from './source/syntax-faults.js';

/** The largest file read [bytes of UTF-8]. */
const largestFile = 1_000_000;

/**
 * Reads a parts file: checks all of it and returns its parts in SI.
 *
 * Faults are looked for in three steps, each of which reports all it finds: the text as YAML, its structure, its contents.
 *
 * @param text - the file, YAML 1.2 or JSON, at most 1 MB
 * @param fileName - name of the file, for the error
 * @throws PartsFileError with every problem of the step that found some
 * @public
 */
export function readParts(text: string, fileName = 'parts file'): Parts {
  requireShape({ text, fileName }, { text: someText, fileName: someText });
  const refuse = (problems: readonly PartsFileProblem[]): void => {
    if (problems.length > 0) throw new PartsFileError(fileName, problems);
  };
  refuse(sizeFaults(text));
  const tree = sourceTree(withLineFeeds(text));
  refuse(syntaxFaults(tree));
  refuse(documentFaults(tree));
  const { parts, findings } = checked(tree.documents[0]?.toJS({ maxAliasCount: 0 }));
  refuse(findings.map((finding) => located(tree, finding)));
  return parts;
}

function sizeFaults(text: string): readonly PartsFileProblem[] {
  const bytes = text.length > largestFile ? text.length : new TextEncoder().encode(text).length;
  if (bytes <= largestFile) return [];
  return [
    {
      line: 1,
      column: 1,
      path: '',
      message: `the file must have at most 1 MB, got ${(bytes / 1e6).toFixed(2)} MB`,
    },
  ];
}

function documentFaults(tree: SourceTree): readonly PartsFileProblem[] {
  const [document, second] = tree.documents;
  if (second !== undefined) {
    const message = 'a second document begins here; a parts file is one, without "---" in it';
    return [problemAt(tree.lines, second.range[0], '', message)];
  }
  if (document === undefined || document.contents === null)
    return [{ line: 1, column: 1, path: '', message: 'the file is empty; it must begin with "dashpot: 1"' }];
  return sourceFaults(tree);
}

function checked(value: unknown): { readonly parts: Parts; readonly findings: readonly Finding[] } {
  const whole = fileSchema.safeParse(value);
  const file = (typeof value === 'object' && value !== null ? value : {}) as Readonly<
    Record<string, unknown>
  >;
  const remarks = whole.success ? remarksOf(whole.data) : { about: '' };
  const { parts, findings } = assemble(remarks, {
    oils: partList('oils', file, oilSchema),
    pistons: partList('pistons', file, pistonSchema),
    shocks: partList('shocks', file, shockSchema),
    springs: partList('springs', file, springSchema),
    builds: partList('builds', file, buildSchema),
    shop: partList('shop', file, shopSchema),
    timed: partList('timed', file, timedSchema),
    measurements: partList('measurements', file, measurementSchema),
  });
  return { parts, findings: [...(whole.success ? [] : schemaFindings(whole.error.issues)), ...findings] };
}

function remarksOf({
  about = '',
  day,
  tolerances,
  'recorded-stroke': recordedStroke,
  'recorded-ground': recordedGround,
}: z.output<typeof fileSchema>): Remarks {
  return {
    about,
    ...(day === undefined ? {} : { day }),
    ...(tolerances === undefined ? {} : { tolerances }),
    ...(recordedStroke === undefined ? {} : { recordedStroke }),
    ...(recordedGround === undefined ? {} : { recordedGround }),
  };
}

/** Each entry of a list checked by itself, so that a fault in one does not hide that another does not fit. */
function partList<Schema extends z.core.$ZodType>(
  key: string,
  file: Readonly<Record<string, unknown>>,
  schema: Schema,
): PartList<z.output<Schema>> {
  const list: readonly unknown[] = Array.isArray(file[key]) ? file[key] : [];
  return {
    key,
    entries: list.map((entry) => z.safeParse(schema, entry).data),
    names: list.map(nameOf),
  };
}

function nameOf(entry: unknown): string | undefined {
  const name = typeof entry === 'object' && entry !== null && 'name' in entry ? entry.name : undefined;
  // The same letters may be written in two ways; é is one sign or two.
  return typeof name === 'string' ? name.normalize() : undefined;
}
