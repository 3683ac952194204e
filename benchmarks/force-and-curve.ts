import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { asShipped } from './as-shipped.js';
import type { Timing } from './force-and-curve/measure.js';

// One force and a batch of 201 against the same arithmetic in C, and a curve of 201 points against NumPy on whole arrays: the same shock, in turns.
const rounds = 5;
const { speeds, timedAsBatch, timedAsCurve, timedOneByOne } = await asShipped<
  typeof import('./force-and-curve/measure.js')
>('force-and-curve/measure.ts');

function external(command: string, args: readonly string[]): Timing {
  return JSON.parse(execFileSync(command, args, { encoding: 'utf8' }));
}

const best = (timings: readonly Timing[]): Timing =>
  timings.reduce((least, one) => (one.nanoseconds < least.nanoseconds ? one : least));

const folder = mkdtempSync(join(tmpdir(), 'dashpot-benchmark-'));
try {
  const source = (name: string) => fileURLToPath(new URL(name, import.meta.url));
  const program = join(folder, 'one-force');
  execFileSync('gcc', ['-O3', '-o', program, source('one-force.c'), '-lm']);
  const results = {
    c: [] as Timing[],
    force: [] as Timing[],
    curve: [] as Timing[],
    numpy: [] as Timing[],
    cBatch: [] as Timing[],
    batch: [] as Timing[],
  };
  timedOneByOne(2000);
  timedAsBatch(2000);
  timedAsCurve(2000);
  for (let round = 0; round < rounds; round++) {
    results.c.push(external(program, ['2000']));
    results.force.push(timedOneByOne(2000));
    results.cBatch.push(external(program, ['2000', 'batch']));
    results.batch.push(timedAsBatch(2000));
    results.curve.push(timedAsCurve(2000));
    results.numpy.push(external('/usr/bin/python3', [source('curve.py'), '200']));
  }
  const [c, force, curve, numpy, cBatch, batch] = [
    best(results.c),
    best(results.force),
    best(results.curve),
    best(results.numpy),
    best(results.cBatch),
    best(results.batch),
  ];
  for (const { sum } of [force, curve, numpy, cBatch, batch]) {
    if (Math.abs(sum / c.sum - 1) > 1e-9) throw new Error(`the programs differ: ${sum} N against ${c.sum} N`);
  }
  const perForce = force.nanoseconds / speeds.length;
  console.log(
    `one force: ${perForce.toFixed(0)} ns, C -O3 ${c.nanoseconds.toFixed(0)} ns, ratio ${(perForce / c.nanoseconds).toFixed(2)}`,
  );
  const perBatched = batch.nanoseconds / speeds.length;
  console.log(
    `force of a batch of 201: ${perBatched.toFixed(0)} ns, C -O3 ${cBatch.nanoseconds.toFixed(0)} ns, ratio ${(perBatched / cBatch.nanoseconds).toFixed(2)}`,
  );
  console.log(
    `curve of 201 points: ${(curve.nanoseconds / 1000).toFixed(0)} µs, NumPy ${(numpy.nanoseconds / 1000).toFixed(0)} µs, ratio ${(numpy.nanoseconds / curve.nanoseconds).toFixed(1)} times faster`,
  );
} finally {
  rmSync(folder, { recursive: true });
}
