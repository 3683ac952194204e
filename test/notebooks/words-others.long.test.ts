import { expect, test } from 'vitest';
import { listNotebooks } from '../../lib/runner/build/notebook-list.js';
import { realNotebooks } from '../live/notebook-folders.js';
import { saidOfOthers, saidWithOtherSettings } from './said-by.js';

// What each page says with other files and other settings, as `words.long.test.ts` holds it for the demo parts.

// The two other files: two cars with an odd shock, tapered and stepped holes and two bores, and the smallest that a newcomer would write.
test.each(await listNotebooks(realNotebooks))(
  '$name with other files says what was read',
  async (notebook) => {
    await expect(saidOfOthers(notebook)).toMatchFileSnapshot(`words/others/${notebook.name}.txt`);
  },
);

// Other settings than a page begins with, of the demo parts.
test.each(await listNotebooks(realNotebooks))(
  '$name with other settings says what was read',
  async (notebook) => {
    await expect(saidWithOtherSettings(notebook)).toMatchFileSnapshot(`words/settings/${notebook.name}.txt`);
  },
);
