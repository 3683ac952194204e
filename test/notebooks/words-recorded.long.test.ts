import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { Notebook } from '../../lib/page/index.js';
import { withCourse } from '../../lib/parts/course-entry.js';
import { readParts } from '../../lib/parts/index.js';
import { notebook as benchStroke } from '../../notebooks/bench-stroke.js';
import { notebook as landing } from '../../notebooks/landing.js';
import { fileTexts } from './answers.js';
import { textOrRefusal } from './said-by.js';

// What the two pages say that take a recording. No list of pages is named here, so that a slip in one of the two is shown to this test too.

const texts = {
  ...fileTexts,
  rare: readFileSync(new URL('../parts/files/rare.yaml', import.meta.url), 'utf8'),
} as const;

/** Three seconds of an invented shake, from rest to rest, 100 rows a second, written with so many digits. */
const shaken = (name: string, middle: number, amplitude: number, digits = 4, swings = 9) =>
  [
    `time (s),${name} (mm)`,
    ...Array.from({ length: 301 }, (_, row) => {
      const swing = Math.sin((row / 300) * Math.PI) ** 2 * Math.sin((row / 300) * 2 * Math.PI * swings);
      return `${row / 100},${(middle + amplitude * swing).toFixed(digits)}`;
    }),
  ].join('\n');
const stroke = { notebook: benchStroke, key: 'recorded-stroke' } as const;
const ground = { notebook: landing, key: 'recorded-ground' } as const;

interface Recorded {
  readonly file: string;
  readonly notebook: Notebook;
  readonly key: 'recorded-stroke' | 'recorded-ground';
  readonly record: string;
  readonly from?: keyof typeof texts;
  readonly build?: string;
}

test.each<Recorded>([
  { file: 'bench-stroke-recorded', ...stroke, record: shaken('travel', 12, 11) },
  { file: 'bench-stroke-coarse', ...stroke, record: shaken('travel', 12, 8, 0) },
  {
    file: 'bench-stroke-gas',
    ...stroke,
    from: 'rare',
    build: 'squeezed gas',
    record: shaken('travel', 14, 3, 4, 2),
  },
  { file: 'bench-stroke-locks', ...stroke, from: 'rare', build: 'brim', record: shaken('travel', 10, 9) },
  { file: 'landing-recorded', ...ground, record: shaken('height', 0, 12) },
  { file: 'landing-rough', ...ground, record: shaken('height', 0, 60) },
  { file: 'landing-even', ...ground, record: shaken('height', 0, 0.5) },
  { file: 'landing-locks', ...ground, from: 'rare', build: 'brim', record: shaken('height', 0, 60) },
])('$file says what was read', async ({ file, notebook, key, record, from = 'demo', build }) => {
  const parts = readParts(withCourse(texts[from], key, { record }));
  const said = textOrRefusal(notebook, parts, build === undefined ? {} : { build });
  await expect(said).toMatchFileSnapshot(`words/${file}.txt`);
});
