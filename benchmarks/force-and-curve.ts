import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { asShipped } from './as-shipped.js';
import type { Timing } from './force-and-curve/measure.js';

// One force and a batch of 201 against the same arithmetic in C, a curve of 201 points against NumPy on whole arrays, and a binding against
// a force: the same shock, in turns, all outputs read. A ratio is that of the fastest rounds, then the median of the ratios round by round.
const rounds = 15;
const ours = await asShipped<typeof import('./force-and-curve/measure.js')>('force-and-curve/measure.ts');

interface External extends Timing {
  readonly outputs: readonly number[];
}

function external(command: string, args: readonly string[]): External {
  return JSON.parse(execFileSync(command, args, { encoding: 'utf8' }));
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] as number;
}

/** How many times as long one thing takes as another. */
function compare(name: string, over: string, one: readonly Timing[], other: readonly Timing[]): void {
  const fastest = (timings: readonly Timing[]) => Math.min(...timings.map(({ nanoseconds }) => nanoseconds));
  const [a, b] = [fastest(one), fastest(other)];
  const each = one.map(({ nanoseconds }, round) => nanoseconds / (other[round] as Timing).nanoseconds);
  console.log(
    `${name}: ${a.toFixed(0)} ns, ${over} ${b.toFixed(0)} ns, ratio ${(a / b).toFixed(2)} (median ${median(each).toFixed(2)})`,
  );
}

/** Every output summed over the curve, ours against theirs. */
function requireSame(theirs: readonly number[], program: string): void {
  ours.outputs().forEach((sum, place) => {
    const other = theirs[place] as number;
    if (!(Math.abs(sum / other - 1) <= 1e-9))
      throw new Error(`output ${place} differs: ${sum} against ${other} of ${program}`);
  });
}

const folder = mkdtempSync(join(tmpdir(), 'dashpot-benchmark-'));
try {
  const source = (name: string) => fileURLToPath(new URL(name, import.meta.url));
  const program = join(folder, 'one-force');
  execFileSync('gcc', ['-O3', '-o', program, source('one-force.c'), '-lm']);
  const inC = () => external(program, ['400']);
  const inNumPy = () => external('/usr/bin/python3', [source('curve.py'), '200']);
  requireSame(inC().outputs, 'C');
  requireSame(inNumPy().outputs, 'NumPy');
  for (const timed of [ours.timedOneByOne, ours.timedAsBatch, ours.timedAsCurve]) timed(1000);
  for (const timed of [ours.timedBinding, ours.timedBindingAgain]) timed(50_000);
  const timings: Record<string, Timing[]> = {};
  const note = (name: string, timing: Timing) => {
    timings[name] = [...(timings[name] ?? []), timing];
  };
  for (let round = 0; round < rounds; round++) {
    note('c', inC());
    note('force', ours.timedOneByOne(400));
    note('cBatch', external(program, ['400', 'batch']));
    note('batch', ours.timedAsBatch(400));
    note('numpy', inNumPy());
    note('curve', ours.timedAsCurve(400));
    note('binding', ours.timedBinding(20_000));
    note('again', ours.timedBindingAgain(20_000));
  }
  const {
    c = [],
    force = [],
    cBatch = [],
    batch = [],
    numpy = [],
    curve = [],
    binding = [],
    again = [],
  } = timings;
  compare('one force', 'C -O3', force, c);
  compare('force of a batch of 201', 'C -O3', batch, cBatch);
  compare('NumPy, point of a curve of 201', 'this library', numpy, curve);
  compare('checking and binding', 'one force', binding, force);
  compare('binding', 'one force', again, force);
} finally {
  rmSync(folder, { recursive: true });
}
