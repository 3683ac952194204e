import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import subsetFont from 'subset-font';
import { embeddedFonts, fontFiles, fontNotice } from '../../lib/runner/build/fonts.js';
import { licenceText, packageFolders, sharedNotices } from '../../lib/runner/build/licences.js';
import { listNotebooks } from '../../lib/runner/build/notebook-list.js';
import { programTexts } from '../../lib/runner/build/program-texts.js';
import type { Materials } from '../../lib/runner/packed/package-workshop.js';
import { distFolder, root } from './folders.js';

/**
 * Writes what the command makes pages with where there are no sources, no bundler and no tools for fonts: the programs of all pages, fonts, licences.
 *
 * @param inside - paths of the files that are inside those of the library
 */
export async function layMaterials(inside: readonly string[]): Promise<void> {
  const folder = path.join(distFolder, 'pages');
  mkdirSync(folder, { recursive: true });
  const letters = usualLetters();
  const packages = [...packageFolders(inside)].sort(([a], [b]) => (a < b ? -1 : 1));
  const insideNotices = sharedNotices(packages.map(([name, at]) => [name, licenceText(name, at)]));
  const materials: Materials = {
    fonts: await embeddedFonts(letters),
    fontNotice: await fontNotice(),
    inside: insideNotices,
    programs: await shippedPrograms(),
  };
  writeFileSync(path.join(folder, 'materials.json'), JSON.stringify(materials));
  for (const [weight, file] of Object.entries(fontFiles))
    writeFileSync(
      path.join(folder, `inter-${weight}.ttf`),
      await subsetFont(readFileSync(file), letters, {
        targetFormat: 'truetype',
        keepFeatures: ['kern', 'tnum', 'ccmp', 'mark'],
        noHinting: true,
      }),
    );
  const notices = [...insideNotices, materials.fontNotice].map(({ name, text }) => `${name}\n\n${text}\n`);
  writeFileSync(path.join(distFolder, 'licences.txt'), notices.join(`\n${'-'.repeat(72)}\n\n`));
}

async function shippedPrograms() {
  const notebookFolder = path.join(root, 'notebooks');
  const notebooks = await listNotebooks(notebookFolder);
  return programTexts({
    livePage: path.join(root, 'lib/live/live-page.ts'),
    liveFile: path.join(root, 'lib/live/live-file.ts'),
    notebooks: Object.fromEntries(
      notebooks.map(({ name }) => [name, path.join(notebookFolder, `${name}.ts`)]),
    ),
    entryFile: () => undefined,
  });
}

/** Letters of the western languages, and all that our own sources use; a page shows others in a font of the reader's machine. */
function usualLetters(): string {
  const western = String.fromCharCode(...Array.from({ length: 0x17f - 0xa0 }, (_letter, at) => 0xa0 + at));
  const ours = ['lib', 'notebooks'].flatMap((folder) =>
    readdirSync(path.join(root, folder), { recursive: true, encoding: 'utf8' })
      .filter((name) => /\.(?:ts|yaml)$/u.test(name))
      .map((name) => readFileSync(path.join(root, folder, name), 'utf8')),
  );
  return western + ours.join('');
}
