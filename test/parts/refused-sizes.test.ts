import { describe, expect, it } from 'vitest';
import { type Row, refusal } from './refusal.js';
import { changed, smallFile } from './small-file.js';

it('accepts the file that the rows of refusals change', () => {
  expect(refusal(smallFile)).toBe('accepted');
});

describe('sizes', () => {
  it.each<Row>([
    [
      'negative',
      '1.7 mm',
      '-1.7 mm',
      '19:31 pistons[0].holes[0].diameter: must be greater than 0 mm, got "-1.7 mm"',
    ],
    ['zero', 'bore: 12 mm', 'bore: 0 mm', '22:11 shocks[0].bore: must be greater than 0 mm, got "0 mm"'],
    [
      'too small to be one',
      '1.7 mm',
      '1e-400 mm',
      '19:31 pistons[0].holes[0].diameter: must be greater than 0 mm, got "1e-400 mm"',
    ],
    ['absurd bore', 'bore: 12 mm', 'bore: 12 cm', '22:11 shocks[0].bore: must be 3 mm to 40 mm, got "12 cm"'],
    [
      'absurd hole',
      '1.7 mm',
      '17 mm',
      '19:31 pistons[0].holes[0].diameter: must be 0.1 mm to 10 mm, got "17 mm"',
    ],
    [
      'a friction that nothing measures',
      'stroke: 24 mm',
      'stroke: 24 mm\n    seal: { moving-friction: 2e-148 N }',
      '25:30 shocks[0].seal.moving-friction: must be 0 N, or more than a billionth of 50 N, got "2e-148 N"',
    ],
    ['no friction', 'stroke: 24 mm', 'stroke: 24 mm\n    seal: { moving-friction: 0 N }', 'accepted'],
    ['an oil that is thick but exists', '350 cSt', '350 St', 'accepted'],
    ['the upper end of a range, in another unit', '45 mm', '30 cm', 'accepted'],
    ['the lower end of a range, in another unit', '45 mm', '0.5 cm', 'accepted'],
    [
      'viscosity beyond any damper',
      '350 cSt',
      '3500 St',
      '6:16 oils[0].viscosity: must be 1 cSt to 100000 cSt, got "3500 St"',
    ],
    [
      'a file in metres',
      '2.5 mm',
      '2.5 m',
      '17:16 pistons[0].thickness: must be 0.3 mm to 20 mm, got "2.5 m"',
    ],
    [
      'gauge pressure taken for absolute',
      'volume: 0.9 ml }',
      'volume: 0.9 ml }\n    closing: { ambient-pressure: 0 bar }',
      '27:34 shocks[0].closing.ambient-pressure: must be greater than 0 bar, got "0 bar"',
    ],
    [
      'spring like that of a real car',
      '0.4 N/mm',
      '40 N/mm',
      '28:25 springs[0].rate: must be 0.01 N/mm to 20 N/mm, got "40 N/mm"',
    ],
  ])('%s', (_what, from, to, message) => {
    expect(refusal(changed(from, to))).toBe(message);
  });
});
