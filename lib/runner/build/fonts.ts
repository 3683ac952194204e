import { readFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import path from 'node:path';
import subsetFont from 'subset-font';
import type { EmbeddedFont, Notice } from '../../page/index.js';

const folder = path.dirname(createRequire(import.meta.url).resolve('@expo-google-fonts/inter/package.json'));

/** The shipped font files by weight. */
export const fontFiles: Readonly<Record<EmbeddedFont['weight'], string>> = {
  400: path.join(folder, '400Regular', 'Inter_400Regular.ttf'),
  600: path.join(folder, '600SemiBold', 'Inter_600SemiBold.ttf'),
};

/** Printable ASCII, so that a text changed later still finds most of its letters. */
const always = String.fromCharCode(...Array.from({ length: 95 }, (_letter, index) => 32 + index));

/**
 * The shipped font cut down to the letters of a text.
 *
 * @param text - whatever the page says
 * @returns both weights; the same letters give the same bytes
 */
export async function embeddedFonts(text: string): Promise<readonly EmbeddedFont[]> {
  const letters = [...new Set([...always, ...text])].sort().join('');
  return Promise.all(
    ([400, 600] as const).map(async (weight) => {
      const whole = await readFile(fontFiles[weight]);
      const subset = await subsetFont(whole, letters, {
        targetFormat: 'woff2',
        // Pairs of letters are drawn together only where they are large: the table is a tenth of the font.
        keepFeatures: [...(weight === 600 ? ['kern'] : []), 'tnum', 'ccmp', 'mark'],
        noHinting: true,
      });
      return { weight, woff2: subset.toString('base64') };
    }),
  );
}

/** The licence that travels with the font (SIL Open Font License 1.1, condition 2). */
export async function fontNotice(): Promise<Notice> {
  return { name: 'the Inter font', text: await readFile(path.join(folder, 'LICENSE_FONT'), 'utf8') };
}
