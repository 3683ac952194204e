import { describe, expect, test } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import { dynoReadings } from '../../lib/measure/dyno/dyno-readings.js';
import { linearDyno } from '../../lib/measure/dyno/linear-dyno.js';
import { readDynoFile } from '../../lib/measure/dyno/read-dyno.js';
import type { MeasuredShockProblem } from '../../lib/measure/fit/fit-problem.js';
import { fitShock } from '../../lib/measure/fit/fit-shock.js';
import type { DropReading, Reading } from '../../lib/measure/reading/reading.js';
import checks from '../published/measure-checks.json' with { type: 'json' };
import {
  checkRow,
  inventedLaw,
  type RowName,
  type RowValues,
  stateOfRow,
  unknownOfRow,
} from './invented-shock.js';

const truth = stateOfRow(checkRow<{ true: RowValues }, unknown>('shock-force').inputs.true);
const stated = inventedLaw(truth);
const setup = { temperature: 295.15, position: 0.014, uncertainty: 0.1, relativeUncertainty: 0.01 };

const drop = (mass: number, times: readonly number[], rest: Partial<DropReading> = {}): DropReading => ({
  kind: 'drop',
  mass,
  times,
  timing: 'hand',
  uncertainty: 0.1,
  temperature: 295.15,
  from: 0.025,
  to: 0.003,
  ...rest,
});
const problem = (
  readings: readonly Reading[],
  unknowns: readonly RowName[],
  known = truth,
): MeasuredShockProblem => ({
  law: inventedLaw,
  known,
  unknowns: unknowns.map((name) => unknownOfRow(name, false)),
  readings,
});

function refusal(attempt: () => unknown): InputError {
  try {
    attempt();
  } catch (error) {
    if (error instanceof InputError) return error;
    throw error;
  }
  throw new Error('nothing was refused');
}

const fitted = (readings: readonly Reading[], unknowns: readonly RowName[] = ['lnNu'], known = truth) =>
  refusal(() => fitShock(problem(readings, unknowns, known)));
const file = (header: string, rows: readonly string[]) =>
  refusal(() => readDynoFile([header, ...rows].join('\n')));

const speeds = [0.05, 0.1, 0.2, 0.3, -0.05, -0.1, -0.2, -0.3];
const forces = speeds.map(
  (speed) =>
    stated.at(295.15).dampingForce(speed, 0.014) +
    stated.at(295.15).gasForce(0.014) +
    Math.sign(speed) * stated.friction,
);
const steps = Array.from({ length: 30 }, (_, index) => 0.005 * index);

/** What each row of the list is tried with; the field that it must name is in the row. */
const attempts: Readonly<Record<string, () => InputError>> = {
  'refuse-no-unit': () => file('time,travel (mm),force (N)', ['0,1,1', '1,2,1', '2,3,1', '3,4,1']),
  'refuse-negative': () => fitted([drop(0.05, [-2.3])]),
  'refuse-zero': () => fitted([drop(0.05, [0])]),
  'refuse-one-point': () => fitted([drop(0.05, [2.2])], ['lnNu', 'F']),
  'refuse-tenfold': () => fitted([drop(0.05, [2.21, 2.18, 22.4])]),
  'refuse-weight-too-light': () => fitted([drop(0.02, [30])], ['lnNu'], { ...truth, friction: 0.45 }),
  'refuse-swapped': () =>
    refusal(() =>
      dynoReadings(
        { speed: forces.map((force) => force / 1000), force: speeds.map((speed) => 1000 * speed) },
        setup,
        stated,
      ),
    ),
  'refuse-sign': () =>
    refusal(() => dynoReadings({ speed: speeds, force: forces.map((force) => -force) }, setup, stated)),
  'refuse-decimal-comma': () =>
    file('velocity_m_s,force_N', ['"0,35","12,4"', '"0,4","13"', '"0,5","14"', '"0,6","15"']),
  'refuse-not-even': () =>
    refusal(() =>
      dynoReadings(
        {
          time: steps.map((t, index) => (index > 15 ? t + 0.045 : t)),
          travel: steps.map((t) => 0.01 * Math.sin(19 * t)),
          force: steps.map(() => 1),
        },
        setup,
        stated,
      ),
    ),
  'refuse-nan': () => file('velocity_mm_s,force_N', ['10,1', '20,', '30,3', '40,4']),
  'refuse-back-in-time': () =>
    file(
      'time_s,travel_mm,force_N',
      steps.map((t, index) => `${index === 16 ? 0.01 : t},1,1`),
    ),
};

describe('each refusal names its field', () => {
  const rows = checks.checks.filter(({ group }) => group === 'refuse');

  test('every row is tried', () =>
    expect(rows.map(({ id }) => id).sort()).toEqual(Object.keys(attempts).sort()));

  test.each(rows)('$id', ({ id, expected }) => {
    const { field } = expected as unknown as { field: string };
    const error = attempts[id]?.();
    // One time of a list is named by its place in it.
    const named = error?.field.replace(/^readings\[\d+\]\./u, '').replace(/^times\[0\]$/u, 'time');
    expect(named).toBe(field);
    expect(error?.accepted).not.toBe('');
  });
});

describe('what a refusal says', () => {
  test.each([
    ['refuse-one-point', 'a drop of a second, heavier weight would do'],
    ['refuse-tenfold', 'unless the decimal point is in the wrong place'],
    ['refuse-weight-too-light', 'gives a bound, not a time'],
    ['refuse-swapped', 'speed and force look exchanged'],
    ['refuse-sign', 'sign, or that of the travel, is turned'],
    ['refuse-decimal-comma', 'decimal points, or with ; between the columns'],
    ['refuse-not-even', 'between rows 16 and 17'],
    ['refuse-nan', 'row 2'],
    ['refuse-back-in-time', 'row 17'],
    ['refuse-no-unit', 'headed with a unit (s, ms'],
  ])('%s: %s', (id, text) => expect(attempts[id]?.().message).toContain(text));

  test('an unquoted decimal comma between commas is told by its row too', () => {
    expect(file('velocity_mm_s,force_N', ['10,1', '20,5,2', '30,3', '40,4']).field).toBe('row 2');
  });

  test('a row that is too long between semicolons or too short, and a file without a word in it', () => {
    const long = file('velocity_mm_s;force_N', ['10;1', '20;2;7', '30;3', '40;4']);
    expect([long.field, long.accepted]).toEqual(['row 2', '2 cells']);
    expect(file('velocity_mm_s;force_N', ['10;1', '20', '30;3', '40;4']).accepted).toBe('a number in row 2');
    expect(file('# nothing', ['', ' ']).accepted).toBe('two or more columns parted by tab, ; or ,');
  });

  test('forces a thousand times too small, by how much', () => {
    const small = forces.map((force) => force / 1000);
    const still = { ...stated, at: (t: number) => ({ ...stated.at(t), gasForce: () => 0 }) };
    expect(refusal(() => dynoReadings({ speed: speeds, force: small }, setup, still)).message).toContain(
      'a damping 1/990 that of the parts',
    );
  });

  test('a record shorter than the window that smooths it, and columns of different lengths', () => {
    const [time, travel, force] = [steps.slice(0, 6), steps.slice(0, 6), steps.slice(0, 6).map(() => 1)];
    const error = refusal(() => dynoReadings({ time, travel, force }, setup, stated));
    expect([error.field, error.accepted]).toEqual(['rows', 'more than 6']);
    const uneven = refusal(() => linearDyno({ time, travel, speed: travel, force: [1, 2] }, 0));
    expect([uneven.field, uneven.accepted]).toEqual(['force', 'as many as 6, 6, 6']);
  });

  test('a heavier weight that is clearly slower', () => {
    const error = fitted([drop(0.05, [2.2, 2.2]), drop(0.1, [3.1, 3.1])]);
    expect(error.field).toBe('readings[1].times');
    expect(error.accepted).toContain('below the 2.2 s of the lighter weight');
    // Within their doubt, two weights that are nearly alike may come out the wrong way round.
    expect(() =>
      fitShock(problem([drop(0.05, [2.2, 2.2]), drop(0.052, [2.22, 2.24])], ['lnNu'])),
    ).not.toThrow();
  });

  test('a time by hand that no hand can take', () => {
    expect(fitted([drop(0.05, [0.04])]).accepted).toContain('film a shorter one');
    expect(() =>
      fitShock(problem([drop(0.5, [0.19], { timing: 'frames', uncertainty: 0.008 })], ['lnNu'])),
    ).not.toThrow();
  });

  test('one speed only, and columns that are missing or doubled', () => {
    expect(
      refusal(() => dynoReadings({ speed: [0.1, 0.1, -0.1], force: [5, 5, -5] }, setup, stated)).field,
    ).toBe('speed');
    expect(file('speed (mm/s),remark', ['1,2', '1,2', '1,2', '1,2']).field).toBe('force');
    expect(file('force (N),force (N)', ['1,2']).field).toBe('force');
    expect(file('time (s),force (N)', ['1,2']).field).toBe('speed');
    expect(file('force', []).field).toBe('header');
  });

  test('numbers of a reading outside their range, and an unknown named twice', () => {
    const scale: Reading = {
      kind: 'scale',
      position: 0.01,
      moving: 'in',
      temperature: 295,
      force: Number.NaN,
      uncertainty: 0.02,
    };
    expect(fitted([scale]).field).toBe('readings[0].force');
    expect(fitted([{ ...scale, force: 1, uncertainty: 0 }]).field).toBe('readings[0].uncertainty');
    expect(fitted([drop(0.05, [])]).field).toBe('readings[0].times');
    expect(fitted([drop(0, [2])]).field).toBe('readings[0].mass');
    expect(fitted([drop(0.05, [2], { to: 0.025 })]).field).toBe('readings[0].to');
    expect(fitted([drop(0.05, [2])], ['lnNu', 'lnNu']).field).toBe('unknowns[1].quantity');
  });
});
