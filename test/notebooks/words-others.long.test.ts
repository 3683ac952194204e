import { expect, test } from 'vitest';
import { withCourse } from '../../lib/parts/course-entry.js';
import { readParts } from '../../lib/parts/index.js';
import { listNotebooks } from '../../lib/runner/build/notebook-list.js';
import { notebook as benchStroke } from '../../notebooks/bench-stroke.js';
import { notebook as landing } from '../../notebooks/landing.js';
import { realNotebooks } from '../live/notebook-folders.js';
import { fileTexts } from './answers.js';
import { saidBy, saidOfOthers, saidWithOtherSettings } from './said-by.js';

// What each page says with other files, other settings and with recordings, as `words.long.test.ts` holds it for the demo parts.

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

/** Three seconds of an invented shake, from rest to rest, 100 rows a second. */
const shaken = (name: string, middle: number, amplitude: number) =>
  [
    `time (s),${name} (mm)`,
    ...Array.from({ length: 301 }, (_, row) => {
      const swing = Math.sin((row / 300) * Math.PI) ** 2 * Math.sin((row / 300) * 18 * Math.PI);
      return `${row / 100},${(middle + amplitude * swing).toFixed(4)}`;
    }),
  ].join('\n');

test.each([
  {
    file: 'bench-stroke-recorded',
    notebook: benchStroke,
    key: 'recorded-stroke',
    record: shaken('travel', 12, 11),
  },
  { file: 'landing-recorded', notebook: landing, key: 'recorded-ground', record: shaken('height', 0, 12) },
] as const)('$file says what was read', async ({ file, notebook, key, record }) => {
  const parts = readParts(withCourse(fileTexts.demo, key, { record }));
  await expect(saidBy(notebook, parts)).toMatchFileSnapshot(`words/${file}.txt`);
});
