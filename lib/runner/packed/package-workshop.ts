import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import type { EmbeddedFont, Notice } from '../../page/index.js';
import { livePrograms, type ProgramTexts } from '../build/live-programs.js';
import { bundler } from '../build/own-notebook.js';
import type { RunFacts } from '../build/render-notebook.js';
import type { Workshop } from '../build/workshop.js';
import { versionIn } from '../command/version-in.js';

/** What the build lays ready for pages, in `dist/pages/materials.json`. */
export interface Materials {
  readonly fonts: readonly EmbeddedFont[];
  readonly fontNotice: Notice;
  /** Licences of the packages inside the files of the library. */
  readonly inside: readonly Notice[];
  /** The programs of the pages that come with the library. */
  readonly programs: ProgramTexts;
}

/** Files of the package by their names in it; a package finds itself by its own name. */
const { resolve } = createRequire(import.meta.url);
const fromPackage = (...names: readonly string[]): string =>
  path.join(path.dirname(resolve('dashpot/package.json')), ...names);

/** The parts file of an invented car. */
export const demoParts = (): string => fromPackage('notebooks', 'demo-parts.yaml');

/** Makes pages from what the package holds ready-made. */
export function packageWorkshop(): Workshop {
  const version = versionIn(fromPackage('package.json'));
  return {
    version,
    calledAs: 'npx dashpot',
    async notebooks() {
      // Made by the build: all notebooks in one file.
      const { notebooks } = await import('shipped-notebooks');
      return notebooks;
    },
    async facts() {
      const { programs, ...facts } = await common(version);
      return { ...facts, programs: livePrograms(programs) };
    },
    async ownFacts({ notebook, file }) {
      const { programs: _shipped, ...facts } = await common(version);
      if ((await bundler()) === undefined) {
        const remark = 'Without esbuild this page has no sliders: npm install esbuild';
        return { ...facts, remarks: [...facts.remarks, remark] };
      }
      const { programTexts } = await import('../build/program-texts.js');
      const texts = await programTexts({
        livePage: fromPackage('dist', 'live-page.js'),
        notebooks: { [notebook.name]: file },
        entryFile,
      });
      return { ...facts, programs: livePrograms(texts) };
    },
    entryFile,
  };
}

function entryFile(name: string): string | undefined {
  try {
    return resolve(name);
  } catch {
    return undefined;
  }
}

async function common(
  version: string,
): Promise<
  Omit<RunFacts, 'programs'> & { readonly programs: ProgramTexts; readonly remarks: readonly string[] }
> {
  const { fonts, fontNotice, inside, programs }: Materials = JSON.parse(
    readFileSync(fromPackage('dist', 'pages', 'materials.json'), 'utf8'),
  );
  const png = await pictureMaker();
  return {
    version,
    notices: [fontNotice, ...inside],
    fonts: async () => fonts,
    programs,
    ...(png === undefined
      ? { remarks: ['Without @resvg/resvg-js there are no PNG files: npm install @resvg/resvg-js'] }
      : { png, remarks: [] }),
  };
}

async function pictureMaker(): Promise<RunFacts['png']> {
  const { pngMaker } = await import('../build/png.js').catch(() => ({ pngMaker: undefined }));
  return pngMaker?.([400, 600].map((weight) => fromPackage('dist', 'pages', `inter-${weight}.ttf`)));
}
