import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath, pathToFileURL } from 'node:url';

// What an entry of the built package costs a program of Node at its start: processor time of the first import, beside that of a module with nothing
// in it. The runs alternate, and the least of each counts, since a busy machine only adds.
const dist = new URL('../dist/', import.meta.url);
if (!existsSync(fileURLToPath(dist))) throw new Error('npm run build first');
const rounds = 15;
const nothing = 'data:text/javascript,export{}';
const entries = ['core', 'fluid', 'fill', 'motion', 'decisions', 'measure', 'plot', 'parts', 'page'];

/** Processor time of a first import [ms]. */
function coldImport(address: string): number {
  const script = `const before = process.cpuUsage();
await import(${JSON.stringify(address)});
const { user, system } = process.cpuUsage(before);
console.log((user + system) / 1000);`;
  return Number(execFileSync('node', ['--input-type=module', '-e', script], { encoding: 'utf8' }));
}

const addresses = new Map([
  ['nothing', nothing],
  ...entries.map((name) => [name, new URL(`${name}.js`, pathToFileURL(fileURLToPath(dist))).href] as const),
]);
const least = new Map<string, number>();
for (let round = 0; round < rounds; round++)
  for (const [name, address] of addresses)
    least.set(name, Math.min(least.get(name) ?? Number.POSITIVE_INFINITY, coldImport(address)));
const empty = least.get('nothing') ?? Number.NaN;
console.table(
  Object.fromEntries(
    [...least].map(([name, time]) => [
      name,
      { 'processor time (ms)': time.toFixed(1), 'times that of nothing': (time / empty).toFixed(1) },
    ]),
  ),
);
