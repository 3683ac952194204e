import { describe, expect, test } from 'vitest';
import type { DropReading } from '../../lib/measure/reading/reading.js';
import { readParts } from '../../lib/parts/read-parts.js';
import { PartsFileError } from '../../lib/parts/source/parts-file-error.js';
import { smallFile } from './small-file.js';

const measured = `
measurements:
  - { shock: front left, temperature: 22 °C, drop: { weight: 50 g, times: [2.18 s, 2.31 s, 2.29 s], by: stopwatch, from: 15 mm, to: 3 mm } }
  - { temperature: 22 °C, drop: { weight: 100 g, times: [1080 ms], by: film, frames-per-second: 240, from: 15 mm, to: 3 mm } }
  - { temperature: 22 °C, scale: { at: 10 mm, pushing-in: 48 g, letting-out: 0.08 N } }
  - { temperature: 22 °C, ball: { diameter: 1.5 mm, density: 7800 kg/m³, tube: 25 mm, stretch: 100 mm, time: 5.1 s } }
  - { temperature: 22 °C, cup: { cup: Ford 4, time: 46 s } }
  - { hole: { diameter: 1.31 mm, by: pin gauge } }
  - { temperature: 22 °C, weighed: { volume: 20 ml, mass: 17.4 g } }
`;
const whole = `${smallFile}${measured}`;

function refusal(from: string, to: string): readonly string[] {
  if (!whole.includes(from)) throw new Error(`"${from}" is not in the file`);
  try {
    readParts(
      whole.replace(from, () => to),
      'p',
    );
  } catch (error) {
    if (error instanceof PartsFileError)
      return error.problems.map(({ path, message }) => `${path}: ${message}`);
    throw error;
  }
  return [];
}

describe('measurements of the parts file', () => {
  const { measurements = [] } = readParts(whole);

  test('each becomes readings in SI, tied to the only build', () => {
    expect(measurements.map(({ build }) => build.name)).toEqual(
      measurements.map(() => measurements[0]?.build.name),
    );
    expect(measurements.map(({ readings }) => readings.map(({ kind }) => kind))).toEqual([
      ['drop'],
      ['drop'],
      ['scale', 'scale'],
      ['viscosity'],
      ['viscosity'],
      ['hole'],
      ['density'],
    ]);
    expect(measurements[0]?.shock).toBe('front left');
    expect(measurements[0]?.readings[0]).toEqual({
      kind: 'drop',
      mass: 0.05,
      times: [2.18, 2.31, 2.29],
      timing: 'hand',
      uncertainty: 0.1,
      temperature: 295.15,
      from: 0.015,
      to: 0.003,
    });
  });

  test('frames are counted with their own uncertainty, grams are weights, a ball and a cup are viscosities', () => {
    const [film] = (measurements[1]?.readings ?? []) as readonly DropReading[];
    expect(film).toMatchObject({ timing: 'frames', times: [1.08] });
    // Two frames of judging, and each end anywhere within a frame.
    expect(film?.uncertainty).toBeCloseTo(Math.hypot(2, 1 / Math.sqrt(6)) / 240, 12);
    const scale = measurements[2]?.readings ?? [];
    expect(scale[0]).toMatchObject({ moving: 'in', position: 0.01, temperature: 295.15, uncertainty: 0.02 });
    expect(scale[0]?.kind === 'scale' && scale[0].force).toBeCloseTo(0.048 * 9.80665, 12);
    expect(scale[1]).toMatchObject({ moving: 'out', force: 0.08 });
    expect(measurements[4]?.readings[0]).toMatchObject({ kind: 'viscosity', temperature: 295.15 });
    const cup = measurements[4]?.readings[0];
    expect(cup?.kind === 'viscosity' && cup.kinematicViscosity * 1e6).toBeCloseTo(159.8135, 6);
    expect(measurements[5]?.readings[0]).toEqual({ kind: 'hole', diameter: 0.00131, uncertainty: 5e-6 });
    const weighed = measurements[6]?.readings[0];
    expect(weighed?.kind === 'density' && weighed.density).toBeCloseTo(870, 9);
  });

  test.each([
    ['2.18 s', '2.18', 'measurements[0].drop.times[0]: needs a unit, for example "2.18 s", got 2.18'],
    ['2.18 s', '-2.18 s', 'measurements[0].drop.times[0]: must be greater than 0 s'],
    ['2.18 s', '0 s', 'measurements[0].drop.times[0]: must be greater than 0 s'],
    [
      '2.31 s',
      '23.1 s',
      'measurements[0].drop.times[1]: must be near to the others, 2.29 s, unless the decimal point is in the wrong place',
    ],
    [
      '15 mm, to: 3 mm } }\n  - { temperature',
      '3 mm, to: 3 mm } }\n  - { temperature',
      'measurements[0].drop.to: must be another place than "from"',
    ],
    [', frames-per-second: 240', '', 'measurements[1].drop.frames-per-second: is missing'],
    [
      'letting-out: 0.08 N',
      'letting-out: 80 g',
      'measurements[2].scale.letting-out: must be at most the reading while pushing in',
    ],
    ['pushing-in: 48 g', 'pushing-in: 48', 'measurements[2].scale.pushing-in: needs a unit'],
    [
      'pushing-in: 48 g',
      'pushing-in: 48 kg',
      'measurements[2].scale.pushing-in: must be -50 N to 50 N, or as much in grams',
    ],
    ['tube: 25 mm', 'tube: 5 mm', 'measurements[3].ball.tube: must be 0 to 0.1'],
    ['cup: Ford 4', 'cup: Ford 9', 'measurements[4].cup.cup:'],
    ['temperature: 22 °C, cup', 'cup', 'measurements[4].temperature: is missing'],
    [
      'hole: {',
      'scale: { at: 1 mm, pushing-in: 1 N, letting-out: 0 N }, hole: {',
      'measurements[5]: is scale and hole at once',
    ],
    [
      '{ hole: { diameter: 1.31 mm, by: pin gauge } }',
      '{ temperature: 20 °C }',
      'measurements[5]: needs what was measured: one of drop, scale',
    ],
    [
      'shock: front left,',
      'shock: front left, build: no such,',
      'measurements[0].build: no build is named "no such"',
    ],
  ])('%s as %s', (from, to, message) => {
    const found = refusal(from, to);
    expect(
      found.some((problem) => problem.startsWith(message)),
      found.join('\n'),
    ).toBe(true);
  });
});
