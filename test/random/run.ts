// The property tests with a new seed, and more cases: npm run random [-- SEED [CASES]]. The same seed gives the same cases.
import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const [seed = String(Math.floor(2 ** 31 * Math.random())), cases = '1000'] = process.argv.slice(2);
if (!(Number.isSafeInteger(Number(seed)) && Number.isSafeInteger(Number(cases)) && Number(cases) > 0)) {
  throw new Error('npm run random -- SEED CASES takes two whole numbers, the second above 0');
}

/** Quick tests that ask fast-check for cases. */
const files = readdirSync(join(root, 'test'), { recursive: true, encoding: 'utf8' })
  .filter((path) => /(?<!slow|browser)\.test\.ts$/u.test(path))
  .map((path) => join(root, 'test', path))
  .filter((path) => readFileSync(path, 'utf8').includes("from 'fast-check'"))
  .map((path) => relative(root, path));

const again = `npm run random -- ${seed} ${cases}`;
console.log(`${files.length} files, ${cases} cases a property, seed ${seed}; the same again: ${again}`);
const { status } = spawnSync(
  'npx',
  ['vitest', 'run', '--config', 'test/vitest.config.ts', '--project', 'quick', ...files],
  {
    cwd: root,
    stdio: 'inherit',
    env: { ...process.env, FAST_CHECK_SEED: seed, FAST_CHECK_RUNS: cases },
  },
);
if (status !== 0) console.log(`Seed ${seed} failed; the same again: ${again}`);
process.exitCode = status ?? 1;
