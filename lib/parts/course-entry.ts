import { isMap, isNode, isScalar, parseDocument } from 'yaml';
import { type CourseKind, readCourse } from '../measure/dyno/read-course.js';
import { recordLines, withNewline } from './record-lines.js';

/**
 * Key of a recording in a parts file.
 *
 * @public
 */
export type CourseKey = 'recorded-stroke' | 'recorded-ground';

/** What each recording is of. */
const kinds: Readonly<Record<CourseKey, CourseKind>> = {
  'recorded-stroke': 'travel',
  'recorded-ground': 'height',
};

/** A recording that is to be taken into a parts file, in the words of its user. */
export interface CourseEntry {
  /** The text of the file. */
  readonly record: string;
  /** How far the shaft is in where the travel of the record is 0, such as `4 mm`; of a stroke only. */
  readonly zeroAt?: string;
}

/**
 * A parts file with a recording in it, in place of one of the same key. What else stands in it stays as written; only a file in brackets, such as JSON, is written anew.
 *
 * @throws InputError that names the column or row of a recording that cannot be read
 */
export function withCourse(text: string, key: CourseKey, { record, zeroAt }: CourseEntry): string {
  readCourse(record, kinds[key]);
  const document = parseDocument(text, { keepSourceTokens: true });
  const { contents } = document;
  const zero = zeroAt === undefined ? {} : { 'zero-at': zeroAt };
  if (isMap(contents) && contents.flow === true) {
    document.set(key, { ...zero, record: `${recordLines(record).join('\n')}\n` });
    return document.toString({ lineWidth: 0 });
  }
  const lines = [
    `${key}:`,
    ...(zeroAt === undefined ? [] : [`  zero-at: ${JSON.stringify(zeroAt)}`]),
    '  record: |',
    ...recordLines(record).map((row) => `    ${row}`),
  ];
  return `${withNewline(without(text, contents, key)).trimEnd()}\n\n${lines.join('\n')}\n`;
}

/** The text without a key of its outermost map. */
function without(text: string, contents: unknown, key: CourseKey): string {
  if (!isMap(contents)) return text;
  const pair = contents.items.find(({ key: name }) => isScalar(name) && name.value === key);
  if (pair === undefined || !isScalar(pair.key) || !pair.key.range) return text;
  const [from] = pair.key.range;
  const end = isNode(pair.value) && pair.value.range ? pair.value.range[1] : pair.key.range[2];
  const newline = text.indexOf('\n', end - 1);
  return text.slice(0, from) + (newline < 0 ? '' : text.slice(newline + 1));
}
