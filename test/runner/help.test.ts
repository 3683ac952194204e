import { expect, test } from 'vitest';
import type { Notebook } from '../../lib/page/index.js';
import { generalHelp, notebookHelp } from '../../lib/runner/help.js';
import { notebook as pair } from '../../notebooks/pair.js';
import { notebook as whatToChange } from '../../notebooks/what-to-change.js';

// What the command says of itself, as somebody read it and let it stand; `npm run quick -- -u` writes the files anew.
const notebooks = [pair, whatToChange] as unknown as readonly Notebook[];

test('the help of the command says what was read', async () => {
  await expect(generalHelp(notebooks, 'dashpot')).toMatchFileSnapshot('words/help.txt');
});

test('the help of a notebook says what was read', async () => {
  await expect(notebookHelp(notebooks[0] as Notebook, 'dashpot pair')).toMatchFileSnapshot(
    'words/help-pair.txt',
  );
});

test('the names of notebooks make one column, as wide as the longest', () => {
  const lines = generalHelp(notebooks, 'dashpot').split('\n');
  const starts = notebooks.map(({ name, question }) =>
    lines.find((line) => line.trim().startsWith(`${name} `) && line.endsWith(question))?.indexOf(question),
  );
  expect(starts).toEqual([2 + 'what-to-change'.length + 2, 2 + 'what-to-change'.length + 2]);
});
