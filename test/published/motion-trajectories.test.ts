import { describe, expect, test } from 'vitest';
import { benchStroke } from '../../lib/motion/bench/bench-stroke.js';
import type { RepeatedStroke } from '../../lib/motion/bench/stroke.js';
import type { CornerEvent } from '../../lib/motion/corner/ground.js';
import { moveCorner } from '../../lib/motion/corner/move-corner.js';
import { referenceShock } from '../motion/reference-shock.js';
import { sampleCorner } from '../motion/sample-corner.js';
import type { SampleChange } from '../motion/sample-shock.js';
import { expectRow, motionRow, motionRows } from './motion-rows.js';

// Reference trajectories of the sample shock and corner. All runs at the default tolerance.

const strokes: Readonly<Record<string, readonly [SampleChange, number]>> = {
  bench: [{}, 10],
  'bench-air': [{ airFraction: 0.01 }, 10],
  'bench-slow': [{}, 1],
  'bench-rel': [{ releasePressure: 15_000 }, 10],
};

function run(name: string) {
  const [change, frequency] = strokes[name] as readonly [SampleChange, number];
  const stroke: RepeatedStroke = { kind: 'sine', middle: 0.012, amplitude: 0.01, frequency, cycles: 2 };
  return benchStroke(referenceShock(change), stroke, { parts: 8 });
}

/** Rows of each case: a prefix finds them, so that a lost one would be missed by nobody. */
const rowCounts: Readonly<Record<string, number>> = {
  bench: 5,
  'bench-rel': 5,
  'bench-air': 4,
  'bench-slow': 4,
  land: 5,
  landhigh: 5,
  'land-air': 4,
  step: 2,
  wash: 2,
};

describe.each(Object.keys(strokes))('stroke %s', (name) => {
  const result = run(name);
  const values: Readonly<Record<string, () => readonly number[]>> = {
    peaks: () => [result.largestForce.value, result.smallestForce.value],
    work: () => result.cycles.map(({ work }) => work),
    cavity: () => [
      result.largestCavity.value,
      result.cavities[0]?.opened ?? 0,
      result.cavities[0]?.closed ?? 0,
    ],
    pressures: () => [result.largestBlindPressure.value, result.largestShaftPressure.value],
    // The trace is of the second cycle, which repeats the first to 1e-9; the end is left out: friction turns there.
    samples: () => [...result.trace.forces.slice(1, 8)],
  };
  const rows = motionRows.filter(({ id }) => id.startsWith(`${name}_`) && id !== 'bench_energy');

  test('has its rows', () => expect(rows).toHaveLength(rowCounts[name] ?? 0));
  test.each(rows)('$id', (row) => {
    expectRow(row, (values[row.id.split('_')[1] ?? ''] as () => readonly number[])());
  });
});

test('bench_energy: where the work of the second cycle goes', () => {
  const { work, lost } = run('bench').cycles[1] as ReturnType<typeof run>['cycles'][number];
  expectRow(motionRow('bench_energy'), [lost.holes, lost.recoil, lost.rim, lost.seals, work]);
});

const events: Readonly<Record<string, readonly [SampleChange, CornerEvent]>> = {
  land: [{}, { kind: 'landing', dropHeight: 0.15 }],
  landhigh: [{}, { kind: 'landing', dropHeight: 0.4 }],
  'land-air': [{ airFraction: 0.01 }, { kind: 'landing', dropHeight: 0.15 }],
  step: [{}, { kind: 'step', height: 0.015 }],
  wash: [{}, { kind: 'washboard', height: 0.006, frequency: 12 }],
};

describe.each(Object.keys(events))('corner %s', (name) => {
  const [change, event] = events[name] as readonly [SampleChange, CornerEvent];
  const r = moveCorner(referenceShock(change), sampleCorner, event);
  const values: Readonly<Record<string, () => readonly number[]>> = {
    force: () => [r.largestShockForce.value, r.largestShockForce.time, r.smallestShockForce.value],
    travel: () => [r.largestTravel.value, r.largestTravel.time, r.lowestBody.value],
    tyre: () => [r.largestTyreForce.value, r.largestBodyAcceleration.value, r.liftOffs[0] ?? 0],
    cavity: () => [r.largestCavity.value, r.cavities[0]?.opened ?? 0, r.cavities[0]?.closed ?? 0],
    end: () => [r.bodyAtEnd, r.wheelAtEnd],
    forces: () => [
      r.largestShockForce.value,
      r.smallestShockForce.value,
      r.largestTyreForce.value,
      r.largestBodyAcceleration.value,
    ],
    motion: () => [r.largestTravel.value, r.lowestBody.value, r.bodyAtEnd],
  };
  const rows = motionRows.filter(({ id }) => id.startsWith(`${name}_`) && id !== 'step_initial_tyre_force');

  test('has its rows', () => expect(rows).toHaveLength(rowCounts[name] ?? 0));
  test.each(rows)('$id', (row) => {
    expectRow(row, (values[row.id.split('_')[1] ?? ''] as () => readonly number[])());
  });
});

test('step_initial_tyre_force', () => {
  const row = motionRow('step_initial_tyre_force');
  const { largestTyreForce } = moveCorner(referenceShock(), sampleCorner, { kind: 'step', height: 0.015 });
  expect(largestTyreForce.time).toBe(0);
  expectRow(row, [largestTyreForce.value]);
});
