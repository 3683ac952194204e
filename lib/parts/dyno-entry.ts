import { isMap, isNode, isSeq, parseDocument } from 'yaml';
import { readDynoFile } from '../measure/dyno/read-dyno.js';
import { recordLines, withNewline } from './record-lines.js';

/** A dyno file that is to be taken into a parts file, in the words of its user. */
export interface DynoEntry {
  /** The text of the file. */
  readonly record: string;
  /** Name of the build; may be left out where there is one. */
  readonly build?: string;
  /** Which of the shocks of the build. */
  readonly shock?: string;
  /** Oil temperature, such as `22 °C`. */
  readonly temperature: string;
  /** How far the shaft is in where the travel of the record is 0, such as `4 mm`. */
  readonly zeroAt?: string;
}

/** The entry as lines of a list of dashes. */
function dashed({ record, build, shock, temperature, zeroAt }: DynoEntry, indent: string): string {
  const said = (key: string, value: string | undefined): readonly string[] =>
    value === undefined ? [] : [`${key}: ${JSON.stringify(value)}`];
  const lines = [
    ...said('build', build),
    ...said('shock', shock),
    ...said('temperature', temperature),
    'dyno:',
    ...said('  zero-at', zeroAt),
    '  record: |',
    ...recordLines(record).map((row) => `    ${row}`),
  ];
  return lines.map((line, index) => `${indent}${index === 0 ? '- ' : '  '}${line}\n`).join('');
}

/** The entry as the value of a list in brackets. */
function bracketed({ record, build, shock, temperature, zeroAt }: DynoEntry) {
  return {
    ...(build === undefined ? {} : { build }),
    ...(shock === undefined ? {} : { shock }),
    temperature,
    dyno: {
      ...(zeroAt === undefined ? {} : { 'zero-at': zeroAt }),
      record: `${recordLines(record).join('\n')}\n`,
    },
  };
}

/**
 * A parts file with a dyno file as the last of its measurements, so that one file still says all. What stands in it stays as written; only a file or
 * list in brackets, such as JSON, is written anew.
 *
 * @param text - the parts file
 * @param entry - what was recorded, and of what
 * @throws InputError that names the column or row of a record that cannot be read
 */
export function withDyno(text: string, entry: DynoEntry): string {
  readDynoFile(entry.record);
  const document = parseDocument(text, { keepSourceTokens: true });
  const { contents } = document;
  const list: unknown = isMap(contents) ? contents.get('measurements') : undefined;
  const inBrackets = (isMap(contents) && contents.flow === true) || (isSeq(list) && list.flow === true);
  if (inBrackets) {
    if (isSeq(list)) list.add(document.createNode(bracketed(entry)));
    else document.set('measurements', [bracketed(entry)]);
    return document.toString({ lineWidth: 0 });
  }
  const last = isSeq(list) ? list.items[list.items.length - 1] : undefined;
  if (!isSeq(list) || !isNode(last) || !last.range || !list.range) {
    return `${withNewline(text)}\nmeasurements:\n${dashed(entry, '  ')}`;
  }
  const dash = list.range[0];
  const indent = text.slice(text.lastIndexOf('\n', dash - 1) + 1, dash);
  const newline = text.indexOf('\n', last.range[1] - 1);
  const [before, after] = newline < 0 ? [text, ''] : [text.slice(0, newline + 1), text.slice(newline + 1)];
  return `${withNewline(before)}${dashed(entry, indent)}${after}`;
}
