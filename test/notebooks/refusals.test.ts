import { expect, test } from 'vitest';
import type { Parts } from '../../lib/parts/index.js';
import { notebook as benchStroke } from '../../notebooks/bench-stroke.js';
import { notebook as buildSheet } from '../../notebooks/build-sheet.js';
import { notebook as dayPlan } from '../../notebooks/day-plan.js';
import { notebook as fillAndBleed } from '../../notebooks/fill-and-bleed.js';
import { notebook as landing } from '../../notebooks/landing.js';
import { notebook as orderPlan } from '../../notebooks/order-plan.js';
import { notebook as pair } from '../../notebooks/pair.js';
import { notebook as spread } from '../../notebooks/spread.js';
import { notebook as warmUp } from '../../notebooks/warm-up.js';
import { notebook as whatIsWrong } from '../../notebooks/what-is-wrong.js';
import { notebook as whatToChange } from '../../notebooks/what-to-change.js';
import { notebook as whatToDrill } from '../../notebooks/what-to-drill.js';
import { changedFile, files, fileTexts, pageOf } from './answers.js';

const exact =
  'hole-diameter: 0 mm, hole-taper: 0 mm, thickness: 0 mm, bore: 0 mm, gap: 0 mm, gas-volume: 0 ml';
const noTolerance = changedFile(fileTexts.demo, /tolerances:[\s\S]*$/u, `tolerances: { ${exact} }\n`);
const noDay = changedFile(fileTexts.demo, /\nday:\n(?: {2}- .*\n)+/u, '\n');

// Whole sentences, with what to do: which way a number has to go is in words that a hand may turn round.
test.each<readonly [unknown, Parts, Readonly<Record<string, string>>, string]>([
  [
    whatToDrill,
    files.demo,
    { smallest: '2 mm', largest: '1 mm' },
    'smallest must be the largest drill or below, 1 mm, got 2 mm',
  ],
  [
    whatToDrill,
    files.demo,
    { step: '0.05 mm', mostHoles: '12' },
    // 12 numbers of holes, 25 drills from 0.8 to 2 mm, 3 tapers, 3 thicknesses of 2.0, 2.5 and 3.0 mm and 6 oils.
    'drills, holes, thicknesses and oils together must be 12000 designs at most: fewer oils, wider steps or fewer holes, got 16200 designs',
  ],
  [
    spread,
    files.demo,
    { slow: '2997 mm/s', middle: '3000 mm/s' },
    'slow must be below middle, 3000 mm/s, got 3000 mm/s',
  ],
  [whatToDrill, files.demo, { slow: '400 mm/s' }, 'slow must be below middle, 300 mm/s, got 400 mm/s'],
  [
    whatToDrill,
    files.demo,
    { slow: '1900 mm/s', back: 'same landing' },
    'slow must be below that of the landing, 1150 mm/s, got 1900 mm/s',
  ],
  [
    fillAndBleed,
    files.twoCars,
    { build: 'buggy rear', freeAir: '0 ml' },
    'freeAir must be above 0 ml for buggy rear, in which nothing but bubbles makes room for the shaft, got 0 ml',
  ],
  [fillAndBleed, files.demo, { coldest: '50 °C' }, 'coldest must be at most the hottest, 38 °C, got 50 °C'],
  [
    spread,
    noTolerance,
    { label: '0 %', temperatureOff: '0 K' },
    'tolerances must be above 0 for at least one size, the label or the temperature, got 0 for all',
  ],
  [orderPlan, files.demo, { coldest: '40 °C' }, 'coldest must be below the hottest, 38 °C, got 40 °C'],
  [dayPlan, noDay, { coldest: '40 °C' }, 'coldest must be at most 38 °C, got 40 °C'],
  [
    warmUp,
    files.demo,
    { bumps: '8 Hz', bumpHeight: '25 mm', wind: '0 m/s', run: '60 min' },
    'bumps must be fewer or lower ones: the oil would pass 150 °C, got 7.1 W of them and 0.083 W of landings',
  ],
  [whatToChange, files.demo, { slow: '2000 mm/s' }, 'slow must be below fast, 1150 mm/s, got 2000 mm/s'],
  [
    benchStroke,
    files.demo,
    { build: 'buggy rear, petroleum', amplitude: '15 mm', frequency: '30 Hz', temperature: '-20 °C' },
    'frequency must be lower, or the amplitude smaller or the oil warmer: shaft and cavity together ask for more room than the gas has, and the shock locks, got 30 Hz',
  ],
  [
    landing,
    files.twoCars,
    { build: 'buggy rear', temperature: '40 °C' },
    'the gas of "buggy rear" must be more than the 0.2 ml of its shaft, or the oil locks: say what makes room under compensator, close it with less oil, or choose a colder oil or a lower drop, got 0.16 ml at 40 °C',
  ],
  [
    pair,
    files.smallest,
    {},
    'timed must be 2 or more timed shocks of one build in the parts file, each with its name, its build and its times, got 0',
  ],
  [
    whatIsWrong,
    files.smallest,
    {},
    'measurements must be one or more in the parts file: a weight hung on the shaft and timed will do, or a dyno file, got none',
  ],
  [
    whatIsWrong,
    files.demo,
    { which: '3' },
    'which must be 1 to 2: rear left (buggy rear), rear right (buggy rear), got 3',
  ],
  [buildSheet, files.demo, { coldest: '50 °C' }, 'coldest must be below the hottest, 38 °C, got 50 °C'],
  [buildSheet, files.demo, { weight: '40 g' }, 'lighterWeight must be below the weight of 40 g, got 50 g'],
])('what does not go together is refused with what would: %#', (notebook, parts, written, said) => {
  expect(() => pageOf(notebook, parts, written)).toThrow(said);
});

test('drills for which the piston has no room are named from the smallest to the largest', () => {
  const thickShaft = changedFile(
    fileTexts.demo,
    'shaft: 3 mm\n    stroke: 24 mm',
    'shaft: 5 mm\n    stroke: 24 mm',
  );
  const { answer } = pageOf(whatToDrill, thickShaft, { smallest: '3.8 mm', largest: '4 mm' });
  // A ring of (11.94 − 5) / 2 = 3.5 mm lies between the shaft and the rim.
  expect(answer).toBe('No hole of 3.8 mm to 4 mm leaves enough land on this piston: take a smaller drill.');
});
