import { expect, test } from 'vitest';
import { notebook as whatToChange } from '../../notebooks/what-to-change.js';
import { fileTexts, pageOfText, tableOf } from './answers.js';

const withShock = (more: string): string =>
  fileTexts.smallest.replace('stroke: 23 mm', `stroke: 23 mm\n    ${more}`);

test.each([
  ['fully in', ['closed fully out', 'closed half way in']],
  ['fully out', ['closed half way in', 'closed fully in']],
] as const)('a shock closed %s is not told to be closed so', (place, others) => {
  const page = pageOfText(whatToChange, withShock(`closing: { shaft: ${place} }`));
  const names = tableOf(page, 'changes').rows.map(([name]) => String(name));
  expect(names.filter((name) => name.startsWith('closed '))).toEqual(others);
});
