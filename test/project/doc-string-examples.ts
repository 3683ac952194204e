import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { DashpotError } from '../../lib/base/dashpot-error.js';
import { root } from './doc-pages.js';

/** An example in the docstring of a function: code of which some lines state their result. */
export interface DocstringExample {
  readonly name: string;
  readonly code: string;
}

const documented = /\/\*\*(?<doc>(?:(?!\*\/)[\s\S])*)\*\/\s*export (?:async )?function (?<name>\w+)/gu;
const shared = 'of the example of damperModel';
const exampleBlock = /@example\n \* ```ts\n(?<code>[\s\S]*?) \* ```/u;

/** All examples in the docstrings of the library, by the name of the function. */
export function docstringExamples(): ReadonlyMap<string, DocstringExample> {
  const files = readdirSync(join(root, 'lib'), { recursive: true, encoding: 'utf8' });
  const found = files
    .filter((file) => file.endsWith('.ts'))
    .flatMap((file) => [...readFileSync(join(root, 'lib', file), 'utf8').matchAll(documented)])
    .flatMap(({ groups }) => {
      const code = exampleBlock.exec(groups?.['doc'] ?? '')?.groups?.['code'];
      const name = groups?.['name'] ?? '';
      return code === undefined ? [] : [[name, { name, code: code.replaceAll(/^ \* ?/gmu, '') }] as const];
    });
  return new Map(found);
}

/** The whole code of an example: one that says so goes on after that of `damperModel`. */
export function wholeCode(
  { code }: DocstringExample,
  examples: ReadonlyMap<string, DocstringExample>,
): string {
  const before = code.includes(shared) ? (examples.get('damperModel')?.code ?? '') : '';
  return [...before.split('\n').filter((line) => !stating.test(line)), ...code.split('\n')].join('\n');
}

/** A line that states its result: `expression; // value: where the value is from`. */
const stating =
  /^(?<expression>[^/].*?); \/\/ (?<value>throws|true|false|undefined|'[^']*'|-?[\d.]+(?:e-?\d+)?): \S.*$/u;

/** What a line states, and the value that its code has. */
export interface Statement {
  readonly line: string;
  readonly stated: string;
  readonly found: unknown;
}

/** Runs an example with all names of the entries known. */
export async function runExample(
  example: DocstringExample,
  examples: ReadonlyMap<string, DocstringExample>,
  known: Readonly<Record<string, unknown>>,
): Promise<readonly Statement[]> {
  const lines = wholeCode(example, examples).split('\n');
  const silent = lines.find((line) => /^(?!const |\/\/|[\s}]|$)/u.test(line) && !stating.test(line));
  if (silent !== undefined) throw new TypeError(`this line states no result and its source: ${silent}`);
  const program = lines.map((line) => {
    const { expression, value } = stating.exec(line)?.groups ?? {};
    return expression === undefined
      ? line.replace(/ as const;$/u, ';')
      : `statements.push({ line: ${JSON.stringify(line)}, stated: ${JSON.stringify(value)}, found: attempt(() => (${expression})) });`;
  });
  const names = Object.keys(known);
  const module = `export function run(known) {
const { ${names.join(', ')} } = known;
const statements = [];
const attempt = (work) => { try { return work(); } catch (error) { return error; } };
{ ${program.join('\n')} }
return statements;
}`;
  const { run } = await import(
    /* @vite-ignore */ `data:text/javascript;base64,${Buffer.from(module).toString('base64')}`
  );
  return run(known);
}

/** Whether a value is what a line states: a number to the digits that stand there. */
export function holds({ stated, found }: Statement): boolean {
  if (stated === 'throws') return found instanceof DashpotError;
  if (stated.startsWith("'")) return found === stated.slice(1, -1);
  if (typeof found !== 'number') return String(found) === stated;
  const [digits = '', exponent = '0'] = stated.split('e');
  const decimals = digits.split('.')[1]?.length ?? 0;
  const lastPlace = 10 ** (Number(exponent) - decimals);
  return Math.abs(found - Number(stated)) <= 0.501 * lastPlace;
}
