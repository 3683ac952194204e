import { expect, test } from 'vitest';
import { listNotebooks } from '../../lib/runner/build/notebook-list.js';
import { realNotebooks } from '../live/notebook-folders.js';
import { saidBy } from './said-by.js';

// What each page says with the demo parts, as somebody read it and let it stand: a word in a file of `words/` that is not true is a fault, and so is
// one that changes unread. Numbers stand as #: they are worked out apart from the pages in the tests beside this one. `npm run words -- -u` writes
// the files anew, those of other parts too; read the difference before you commit it.

test.each(await listNotebooks(realNotebooks))('$name says what was read', async (notebook) => {
  await expect(saidBy(notebook)).toMatchFileSnapshot(`words/${notebook.name}.txt`);
});
