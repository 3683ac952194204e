import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

// Runs every benchmark of this folder, or those named. Each prints ratios measured side by side; none passes or fails.
const folder = fileURLToPath(new URL('.', import.meta.url));
const known = readdirSync(folder)
  .filter((name) => name.endsWith('.ts') && name !== 'run.ts')
  .map((name) => name.replace(/\.ts$/u, ''))
  .sort();
const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !known.includes(name));
if (unknown.length > 0) {
  console.error(`unknown benchmark ${unknown.join(', ')}; there are ${known.join(', ')}`);
  process.exit(2);
}
for (const name of wanted.length > 0 ? wanted : known) {
  console.log(`\n${name}`);
  const { status } = spawnSync('node', ['--import', 'tsx', `${folder}${name}.ts`], { stdio: 'inherit' });
  if (status !== 0) process.exit(status ?? 1);
}
