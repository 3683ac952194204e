import { mkdtempSync, rmSync, statSync } from 'node:fs';
import { loadavg, tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { optionName } from '../lib/page/index.js';
import { listNotebooks } from '../lib/runner/build/notebook-list.js';
import { runCommand } from '../lib/runner/run-command.js';
import { type Moving, moving } from './one-file/moving.js';
import { type Opening, opening } from './one-file/opening.js';

// The file of all pages in Chromium: how large it is, how soon it shows its first figure, how long a page takes to follow another build and a slider. Times on the
// clock grow with the load of the machine; the processor time of the page's own thread hardly does.
//   npm run bench -- one-file                                                      makes the file and measures it
//   npx tsx benchmarks/one-file.ts new.html,old.html                               files made before, side by side: each page in turn, with the ratio
//   npx tsx benchmarks/one-file.ts new.html,old.html landing,compare-builds        those pages only, and no opening
const openings = 7;
const fromHere = (name: string): string => fileURLToPath(new URL(name, import.meta.url));
const [made, wanted] = process.argv.slice(2);

const folder = mkdtempSync(path.join(tmpdir(), 'dashpot-one-file-'));
if (made === undefined)
  await runCommand([], {
    workingFolder: folder,
    notebookFolder: fromHere('../notebooks'),
    demoParts: fromHere('../notebooks/demo-parts.yaml'),
    outFolder: folder,
    version: '0.0.0',
    print: () => undefined,
    printError: (line) => console.error(line),
  });
const files = made?.split(',') ?? [path.join(folder, 'dashpot.html')];
for (const file of files) console.log(`${file}: ${Math.round(statSync(file).size / 1000)} kB (900 at most)`);

const browser = await chromium.launch({
  executablePath: '/usr/bin/chromium',
  args: ['--headless', '--no-sandbox', '--disable-gpu'],
});
const rounds: Opening[][] = files.map(() => []);
for (let round = 0; wanted === undefined && round < openings; round++)
  for (const [place, file] of files.entries())
    rounds[place]?.push(await opening(browser, `${pathToFileURL(file).href}#compare-oils`));
const ofOpening = ['figure', 'painted', 'live', 'drawn', 'processor', 'scripts'] as const;
if (wanted === undefined) console.log(`\nopened at #compare-oils, median (and least) of ${openings} [ms]`);
for (const name of wanted === undefined ? ofOpening : [])
  compared(
    name,
    rounds.map((all) => {
      const sorted = all.map((one) => one[name]).sort((a, b) => a - b);
      return [sorted[Math.floor(sorted.length / 2)] ?? Number.NaN, sorted[0] ?? Number.NaN];
    }),
  );

const notebooks = (await listNotebooks(fromHere('../notebooks'))).filter(
  ({ name }) => wanted === undefined || wanted.split(',').includes(name),
);
for (const kind of ['slider', 'build'] as const) {
  console.log(
    kind === 'slider'
      ? '\na slider moved (16 ms at p95, 50 where things move) [ms]'
      : '\nanother build (150 ms at p95) [ms]',
  );
  for (const { name, parameters } of notebooks) {
    const all = Object.entries(parameters);
    const found = all.find(([key, parameter]) =>
      kind === 'slider' ? parameter.kind === 'quantity' : key === 'build' && parameter.kind === 'part',
    );
    if (found === undefined) continue;
    const measured: Moving[] = [];
    for (const file of files)
      measured.push(await moving(browser, `${pathToFileURL(file).href}#${name}`, optionName(found[0])));
    for (const what of ['p50', 'p95', 'processor', 'processor95', 'rest'] as const)
      compared(
        `${name} ${what}`,
        measured.map((one) => [one[what]]),
      );
  }
}
await browser.close();
rmSync(folder, { recursive: true });
console.log(`\nload of the machine: ${(loadavg()[0] ?? Number.NaN).toFixed(1)}`);

/** One line: a number for each file, with the ratio of the first to the last where there are several. */
function compared(what: string, numbers: readonly (readonly number[])[]): void {
  const texts = numbers.map(([typical = Number.NaN, least]) =>
    `${typical.toFixed(1)}${least === undefined ? '' : ` (${least.toFixed(1)})`}`.padStart(18),
  );
  const [first, last] = [numbers[0]?.[0] ?? Number.NaN, numbers.at(-1)?.[0] ?? Number.NaN];
  const ratio = numbers.length < 2 ? '' : `   ratio ${(first / last).toFixed(2)}`;
  console.log(`${what.padEnd(26)}${texts.join('')}${ratio}`);
}
