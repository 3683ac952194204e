import { describe, expect, it } from 'vitest';
import { type Row, refusal } from './refusal.js';
import { changed } from './small-file.js';

describe('what does not fit', () => {
  const room = 'find room between a shaft of';
  it.each<Row>([
    // Outer ring 2π / 2 asin(1.8/10.05) = 17.4, inner ring 2π / 2 asin(1.8/6.45) = 11.1.
    [
      'too many holes',
      'count: 2',
      'count: 50',
      `19:7 pistons[0].holes: do not fit on the piston: 28 of 50 ${room} 1 mm and the rim at 11.95 mm, with walls of 0.1 mm; the first that does not has 1.7 mm`,
    ],
    [
      'a hole wider than the face',
      '1.7 mm',
      '5.5 mm',
      `19:7 pistons[0].holes: do not fit on the piston: 0 of 2 ${room} 1 mm and the rim at 11.95 mm, with walls of 0.1 mm; the first that does not has 5.5 mm`,
    ],
    [
      'holes that meet the shaft of the build',
      '1.7 mm',
      '4.5 mm',
      `32:13 builds[0].piston: the holes of "two 1.7" do not fit on the piston: 0 of 2 ${room} 3 mm and the rim at 11.95 mm, with walls of 0.1 mm; the first that does not has 4.5 mm`,
    ],
    [
      'piston as wide as the bore',
      '11.95 mm',
      '12 mm',
      '32:13 builds[0].piston: the piston "two 1.7" of 12 mm must be smaller than the bore of 12 mm of "short 12"',
    ],
    [
      'piston of another shock',
      'bore: 12 mm',
      'bore: 16 mm',
      '32:13 builds[0].piston: the piston "two 1.7" of 11.95 mm must be at least 14.4 mm for the bore of 16 mm of "short 12"',
    ],
    [
      'shaft thicker than the bore',
      'shaft: 3 mm\n    stroke: 24 mm',
      'shaft: 13 mm\n    stroke: 6 mm',
      '23:12 shocks[0].shaft: must be thinner than the bore of 12 mm, got 13 mm',
    ],
    [
      'shaft as thick as the bore',
      'shaft: 3 mm\n    stroke: 24 mm',
      'shaft: 12 mm\n    stroke: 6 mm',
      '23:12 shocks[0].shaft: must be thinner than the bore of 12 mm, got 12 mm',
    ],
    [
      'shaft thicker than the piston',
      'shaft: 3 mm\n    stroke: 24 mm',
      'shaft: 11.97 mm\n    stroke: 6 mm',
      '32:13 builds[0].piston: the piston "two 1.7" of 11.95 mm must be larger than the shaft of 11.97 mm of "short 12"',
    ],
    // π/4 · 3² · 24 = 169.6 mm³; 120 mm³ and bubbles of 1 % of 3.2 ml are used up after 152 / 7.069 = 21.5 mm.
    [
      'hydraulic lock',
      '0.9 ml',
      '120 mm³',
      '26:46 shocks[0].compensator.volume: must leave more gas than the 169.6 mm³ that the 3 mm shaft takes from where the shock is closed, fully out, to the end of its stroke of 24 mm, got 152 mm³: the shock locks with the shaft 21.5 mm in',
    ],
    [
      'breakaway below moving friction',
      'volume: 0.9 ml }',
      'volume: 0.9 ml }\n    seal: { moving-friction: 2 N, breakaway-friction: 1 N }',
      '27:55 shocks[0].seal.breakaway-friction: must be at least the moving friction of 2 N, got 1 N',
    ],
  ])('%s', (_what, from, to, message) => {
    expect(refusal(changed(from, to))).toBe(message);
  });
});
