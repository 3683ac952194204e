// Runs every notebook on random accepted parts files and counts what a reader should never see: npm run bench random-files, or
// npx tsx benchmarks/random-files.ts 2000 20261126 NOTEBOOK...; with --keep FOLDER the files of faults are written there.
import { mkdirSync, writeFileSync } from 'node:fs';
import path from 'node:path';
import { listNotebooks } from '../lib/runner/build/notebook-list.js';
import { realNotebooks } from '../test/live/notebook-folders.js';
import { acceptedFiles } from '../test/notebooks/random/accepted-files.js';
import { outcomeOf } from '../test/notebooks/random/page-faults.js';

const words = process.argv.slice(2);
const keepAt = words.indexOf('--keep');
const [, keep] = keepAt < 0 ? [] : words.splice(keepAt, 2);
const [count = '20', seed = '20261126', ...wanted] = words;
const all = await listNotebooks(realNotebooks);
const notebooks = wanted.length === 0 ? all : all.filter(({ name }) => wanted.includes(name));
const { files, tried } = acceptedFiles(Number(count), Number(seed));
const kinds = new Map<string, number>();
const most = new Map<string, number>();
let [pages, refusals, faulty, slow] = [0, 0, 0, 0];
if (keep !== undefined) mkdirSync(keep, { recursive: true });
for (const [place, { text, parts }] of files.entries()) {
  for (const notebook of notebooks) {
    const { faults, refused, seconds } = outcomeOf(notebook, parts);
    pages += 1;
    if (refused !== undefined) refusals += 1;
    if (seconds > 5) slow += 1;
    most.set(notebook.name, Math.max(most.get(notebook.name) ?? 0, seconds));
    if (faults.length > 0) faulty += 1;
    if (faults.length > 0 && keep !== undefined)
      writeFileSync(path.join(keep, `${seed}-${place}.json`), text);
    for (const fault of faults) {
      const kind = `${notebook.name}: ${fault.replaceAll(/-?\d+(?:\.\d+)?(?:e-?\d+)?/gu, '#').slice(0, 160)}`;
      const seen = (kinds.get(kind) ?? 0) + 1;
      kinds.set(kind, seen);
      if (seen <= 2) console.error(`file ${seed}-${place}, ${notebook.name}: ${fault.slice(0, 900)}`);
    }
  }
}
console.log(`files accepted   ${files.length} of ${tried}`);
console.log(`pages            ${pages}, of them refusals ${refusals}`);
console.log(`pages with fault ${faulty}`);
console.log(`pages over 5 s   ${slow}`);
for (const [name, seconds] of most) console.log(`  longest ${name} ${seconds.toFixed(2)} s`);
for (const [kind, times] of [...kinds].sort((a, b) => b[1] - a[1])) console.log(`${times} × ${kind}`);
process.exitCode = faulty === 0 ? 0 : 1;
