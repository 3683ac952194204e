import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { damperForce } from '../lib/damper/damper-force.js';
import { damperModel } from '../lib/damper/damper-model.js';
import { forceVelocityCurve } from '../lib/damper/force-velocity.js';

// One force against the same arithmetic in C, and a curve of 201 points against NumPy on whole arrays: the same shock, in turns.
const rounds = 5;
const shock = {
  bore: 0.012,
  shaftDiameter: 0.003,
  stroke: 0.028,
  piston: { diameter: 0.01195, thickness: 0.0025, holes: [{ count: 4, diameter: 0.0013 }], eccentricity: 0 },
  gas: { volume: 1e-6, pressure: 101_325, polytropicExponent: 1.4, ambientPressure: 101_325 },
  seal: { kineticForce: 0.4, breakawayForce: 0.6 },
};
const model = damperModel(shock, { kinematicViscosity: 3.5e-4, density: 970 });
const speeds = Array.from({ length: 201 }, (_, index) => -2 + 0.02 * index);
const position = 0.014;

interface Timing {
  readonly nanoseconds: number;
  /** Sum of the forces of one curve [N]: all three programs must agree. */
  readonly sum: number;
}

function timed(repeats: number, sumOfCurve: () => number): Timing {
  let sum = 0;
  const start = process.hrtime.bigint();
  for (let repeat = 0; repeat < repeats; repeat++) sum += sumOfCurve();
  return { nanoseconds: Number(process.hrtime.bigint() - start) / repeats, sum: sum / repeats };
}

const oneByOne = () => speeds.reduce((sum, speed) => sum + damperForce(model, { speed, position }).force, 0);
const asCurve = () => forceVelocityCurve(model, speeds, position).reduce((sum, { force }) => sum + force, 0);

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
  const results = { c: [] as Timing[], force: [] as Timing[], curve: [] as Timing[], numpy: [] as Timing[] };
  timed(2000, oneByOne);
  timed(2000, asCurve);
  for (let round = 0; round < rounds; round++) {
    results.c.push(external(program, ['2000']));
    results.force.push(timed(2000, oneByOne));
    results.curve.push(timed(2000, asCurve));
    results.numpy.push(external('/usr/bin/python3', [source('curve.py'), '200']));
  }
  const [c, force, curve, numpy] = [
    best(results.c),
    best(results.force),
    best(results.curve),
    best(results.numpy),
  ];
  for (const { sum } of [force, curve, numpy]) {
    if (Math.abs(sum / c.sum - 1) > 1e-9) throw new Error(`the programs differ: ${sum} N against ${c.sum} N`);
  }
  const perForce = force.nanoseconds / speeds.length;
  console.log(
    `one force: ${perForce.toFixed(0)} ns, C -O3 ${c.nanoseconds.toFixed(0)} ns, ratio ${(perForce / c.nanoseconds).toFixed(2)}`,
  );
  console.log(
    `curve of 201 points: ${(curve.nanoseconds / 1000).toFixed(0)} µs, NumPy ${(numpy.nanoseconds / 1000).toFixed(0)} µs, ratio ${(numpy.nanoseconds / curve.nanoseconds).toFixed(1)} times faster`,
  );
} finally {
  rmSync(folder, { recursive: true });
}
