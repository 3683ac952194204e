// Runs notebooks on random accepted parts files and counts what a reader should never see: npm run bench random-files, or
// npm run random-files -- --files 2000 --seed 20261126 --pages 3 NOTEBOOK...
// With `--settings` half of the controls of each page are set to anything that they take; with `--parts FILE` to those of one file, as often as `--files` says, rather than of random ones.
// With `--minutes` it ends after the file at which so many have passed.
// `--pages` is how many notebooks each file meets, in turn, so that every notebook meets about as many files; without it each meets all. With `--keep FOLDER` the files of
// faults and of pages over 5 s are written there.
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { listNotebooks } from '../lib/runner/build/notebook-list.js';
import { realNotebooks } from '../test/live/notebook-folders.js';
import { asShipped } from './as-shipped.js';

/** Processor time that a page may take [s]. */
const patience = 5;

const { values, positionals } = parseArgs({
  options: {
    files: { type: 'string', default: '20' },
    seed: { type: 'string', default: '20261126' },
    pages: { type: 'string' },
    minutes: { type: 'string' },
    keep: { type: 'string' },
    settings: { type: 'boolean', default: false },
    parts: { type: 'string' },
  },
  allowPositionals: true,
});
const { acceptedFiles, notebookNamed, outcomeOf, randomSettings, readParts } =
  await asShipped<typeof import('./random-files/pages.js')>('random-files/pages.ts');
const all = await Promise.all((await listNotebooks(realNotebooks)).map(({ name }) => notebookNamed(name)));
const notebooks = positionals.length === 0 ? all : all.filter(({ name }) => positionals.includes(name));
const each = Math.min(Number(values.pages ?? notebooks.length), notebooks.length);
const count = Number(values.files);
const seed = Number(values.seed);
const { files, tried } = values.parts === undefined ? acceptedFiles(count, seed) : always(values.parts);

/** One file as often as it is asked for. */
function always(file: string): ReturnType<typeof acceptedFiles> {
  const text = readFileSync(file, 'utf8');
  const parts = readParts(text);
  return { files: Array.from({ length: count }, () => ({ text, parts })), tried: count };
}

interface Tally {
  pages: number;
  refusals: number;
  faulty: number;
  slow: number;
  seconds: number;
  longest: number;
}
/** What was set, for who looks into it. */
const set = (texts: object): string => (Object.keys(texts).length === 0 ? '' : JSON.stringify(texts));
const tallies = new Map<string, Tally>();
const kinds = new Map<string, number>();
const { keep } = values;
const started = performance.now();
const longest = 60_000 * Number(values.minutes ?? Number.POSITIVE_INFINITY);
let run = 0;
if (keep !== undefined) mkdirSync(keep, { recursive: true });
for (const [place, { text, parts }] of files.entries()) {
  if (performance.now() - started > longest) break;
  run++;
  const turn = Array.from(
    { length: each },
    (_, index) => notebooks[(place * each + index) % notebooks.length],
  );
  for (const notebook of turn) {
    if (notebook === undefined) continue;
    const texts = values.settings ? randomSettings(notebook, parts, seed + place) : {};
    const { faults, refused, seconds } = outcomeOf(notebook, parts, texts);
    const tally = tallies.get(notebook.name) ?? {
      pages: 0,
      refusals: 0,
      faulty: 0,
      slow: 0,
      seconds: 0,
      longest: 0,
    };
    tallies.set(notebook.name, tally);
    tally.pages += 1;
    tally.seconds += seconds;
    tally.longest = Math.max(tally.longest, seconds);
    if (refused !== undefined) tally.refusals += 1;
    if (faults.length > 0) tally.faulty += 1;
    if (seconds > patience) {
      tally.slow += 1;
      console.error(`file ${seed}-${place}, ${notebook.name} ${set(texts)}: ${seconds.toFixed(1)} s`);
    }
    if (keep !== undefined && (faults.length > 0 || seconds > patience))
      writeFileSync(path.join(keep, `${values.seed}-${place}.json`), text);
    for (const fault of faults) {
      const kind = `${notebook.name}: ${fault.replaceAll(/-?\d+(?:\.\d+)?(?:e-?\d+)?/gu, '#').slice(0, 160)}`;
      const seen = (kinds.get(kind) ?? 0) + 1;
      kinds.set(kind, seen);
      if (seen <= 2)
        console.error(`file ${seed}-${place}, ${notebook.name} ${set(texts)}: ${fault.slice(0, 900)}`);
    }
  }
}
const sum = (pick: (tally: Tally) => number): number =>
  [...tallies.values()].reduce((total, tally) => total + pick(tally), 0);
const faulty = sum((tally) => tally.faulty);
console.log(`seed             ${values.seed}`);
console.log(`files accepted   ${files.length} of ${tried}, of them run ${run}`);
console.log(
  `pages            ${sum((tally) => tally.pages)}, ${each} of each file, of them refusals ${sum((tally) => tally.refusals)}`,
);
console.log(`pages with fault ${faulty}`);
console.log(`pages over ${patience} s   ${sum((tally) => tally.slow)}`);
console.log(`processor time   ${sum((tally) => tally.seconds).toFixed(0)} s`);
for (const [name, { pages, refusals, seconds, longest, slow }] of tallies)
  console.log(
    `  ${name}: ${pages} pages, ${refusals} refusals, ${(seconds / pages).toFixed(2)} s each, longest ${longest.toFixed(2)} s, ${slow} over ${patience} s`,
  );
for (const [kind, times] of [...kinds].sort((a, b) => b[1] - a[1])) console.log(`${times} × ${kind}`);
process.exitCode = faulty === 0 ? 0 : 1;
