import { describe, expect, test } from 'vitest';
import * as decisions from '../../lib/decisions/index.js';
import * as fill from '../../lib/fill/index.js';
import * as fluid from '../../lib/fluid/index.js';
import * as core from '../../lib/index.js';
import * as measure from '../../lib/measure/index.js';
import * as motion from '../../lib/motion/index.js';
import * as page from '../../lib/page/index.js';
import * as parts from '../../lib/parts/index.js';
import * as plot from '../../lib/plot/index.js';
import * as units from '../../lib/units/index.js';
import { type DocstringExample, docstringExamples, holds, runExample } from './doc-string-examples.js';

const entries = { core, decisions, fill, fluid, measure, motion, page, parts, plot, units };
const examples = docstringExamples();
const all = Object.assign({}, ...Object.values(entries));

/** Functions of an entry that are no classes. */
function functionsOf(entry: Readonly<Record<string, unknown>>): readonly string[] {
  return Object.entries(entry)
    .filter(([, value]) => typeof value === 'function' && !String(value).startsWith('class'))
    .map(([name]) => name);
}

test.each([...examples.values()])('the example of $name has the results that it states', async (example) => {
  const statements = await runExample(example, examples, all);
  expect(statements).not.toEqual([]);
  expect(statements.filter((statement) => !holds(statement))).toEqual([]);
});

describe('there is an example', () => {
  test('of every function of the core', () => {
    expect(functionsOf(core).filter((name) => !examples.has(name))).toEqual([]);
  });

  test.each(Object.entries(entries))('in the entry %s', (_, entry) => {
    expect(functionsOf(entry).some((name) => examples.has(name))).toBe(true);
  });
});

test('an example with another result would fail', async () => {
  const wrong: DocstringExample = {
    name: 'holeArea',
    code: "holeArea({ diameter: 0.0013, length: 0.0025 }); // 1.328e-6: wrong\nholeArea({ diameter: 1, length: 1 }); // throws: wrong\n'word'; // 'other': wrong\n",
  };
  const statements = await runExample(wrong, examples, all);
  expect(statements.map(holds)).toEqual([false, false, false]);
});

test('a result that does not say where it is from is refused', async () => {
  const bare = { name: 'holeArea', code: 'holeArea({ diameter: 1, length: 1 }); // 0.785\n' };
  await expect(runExample(bare, examples, all)).rejects.toThrow('holeArea');
});
