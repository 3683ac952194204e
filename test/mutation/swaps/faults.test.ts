// biome-ignore-all lint/suspicious/noTemplateCurlyInString: the sources are texts here.
import { expect, test } from 'vitest';
import { faultsOf } from './faults.js';

const made = (source: string): readonly string[] =>
  faultsOf('x.ts', source).map(({ start, end, text }) => source.slice(0, start) + text + source.slice(end));

test('a word in a text becomes its opposite, in the case that it had', () => {
  expect(made("const a = 'Softer when it is hot';")).toEqual([
    "const a = 'Harder when it is hot';",
    "const a = 'Softer when it is cold';",
  ]);
  expect(made('`${left} is more`')).toEqual(['`${left} is less`']);
  expect(made('`${a ? `more` : b} less`')).toEqual(['`${a ? `less` : b} less`', '`${a ? `more` : b} more`']);
});

test('a comparison, a sign and a bound are turned, in code and in a place of a text', () => {
  expect(made('a < b')).toEqual(['a > b']);
  expect(made('`x ${a + 1}`')).toEqual(['`x ${a - 1}`']);
  expect(made('{ Math.max(a, b) }')).toEqual(['{ Math.min(a, b) }']);
});

test('what follows a template with an address in it is read on', () => {
  expect(made('const a = `http://${host}/`; b < c')).toEqual(['const a = `http://${host}/`; b > c']);
  expect(made('`an escaped \\` and more`; b < c')).toEqual([
    '`an escaped \\` and less`; b < c',
    '`an escaped \\` and more`; b > c',
  ]);
});

test('a name, a path, a comment and a sign in a text stay as they are', () => {
  expect(made("import { more } from './more.js'; // more or less")).toEqual([]);
  expect(made("import * as less from './less.js';")).toEqual([]);
  expect(made("/** more */ const more = 'a + b';")).toEqual([]);
});
