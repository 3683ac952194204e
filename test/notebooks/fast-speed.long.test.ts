import { describe, expect, it, test } from 'vitest';
import { type Parts, readParts } from '../../lib/parts/index.js';
import { eventsOf, landingSpeedOf, landingSpeedSpan } from '../../notebooks/base/driven-speeds.js';
import { shaftSpeedsOf } from '../../notebooks/base/fast-speed.js';
import { speedsSentence } from '../../notebooks/base/speed-events.js';
import { notebook as compareOils } from '../../notebooks/compare-oils.js';
import { notebook as comparePistons } from '../../notebooks/compare-pistons.js';
import { notebook as landing } from '../../notebooks/landing.js';
import { changedFile, files, fileTexts, pageOf, rowOf, wordsOf } from './answers.js';
import { bruteLanding, type Car } from './brute-landing.js';
import { referenceShock } from './reference-shock.js';

const buildOf = ({ builds }: Parts, name: string) => {
  const build = builds.find((one) => one.name === name);
  if (build === undefined) throw new Error(`no ${name}`);
  return build;
};

// What the page states as its guess of a car: 250, 450 or 900 g on 0.6, 0.7 or 0.8.
const likely: Car = { mass: 0.45, ratio: 0.7 };

const cars: readonly (readonly [keyof typeof files, string, number, Car])[] = [
  ['demo', 'buggy front', 293.15, { mass: 0.34, ratio: 0.72 }],
  ['demo', 'buggy rear', 293.15, { mass: 0.46, ratio: 0.68 }],
  ['demo', 'buggy rear, petroleum', 293.15, likely],
  ['demo', 'big buggy front', 293.15, { mass: 0.78, ratio: 0.7 }],
  ['twoCars', 'buggy front', 292.15, likely],
  ['twoCars', 'truck', 294.15, likely],
];

describe('the fast speed of a build', () => {
  it.each(cars)(
    '%s, %s: that of its landing from 100 mm by brute force, to 50 mm/s',
    (file, name, at, car) => {
      const build = buildOf(files[file], name);
      const { speed } = bruteLanding(build, at, 0.1, car);
      expect(Math.abs((landingSpeedOf(build) ?? 0) / speed - 1)).toBeLessThan(0.003);
      expect(Math.abs(shaftSpeedsOf(build).fast - speed)).toBeLessThan(0.0251 + 0.003 * speed);
    },
  );

  // C with CVODE and Python with SciPy Radau let this corner land from 150 mm with 66.0 N and 16.5 mm; the brute force of these tests is held to them.
  it('by a brute force that agrees with two independent programs on their landing from 150 mm', () => {
    const build = {
      ...buildOf(readParts(referenceShock), 'front'),
      spring: { name: 'soft', rate: 600, freeLength: 0.042 },
    };
    const { travel, push } = bruteLanding(build, 293.15, 0.15, { mass: 0.34, ratio: 0.72, preload: 3e-3 });
    expect(Math.abs(travel / 16.5e-3 - 1)).toBeLessThan(0.02);
    expect(Math.abs(push / 66 - 1)).toBeLessThan(0.02);
  });

  it('where nobody weighed the car: the ends of the guess are the least and the most of its four corners by brute force', () => {
    const build = buildOf(files.twoCars, 'buggy front');
    const { low, high } = landingSpeedSpan(build) ?? { low: 0, high: 0 };
    const speeds = [0.25, 0.9].flatMap((mass) =>
      [0.6, 0.8].map((ratio) => bruteLanding(build, 292.15, 0.1, { mass, ratio }).speed),
    );
    expect(Math.abs(low / Math.min(...speeds) - 1)).toBeLessThan(0.003);
    expect(Math.abs(high / Math.max(...speeds) - 1)).toBeLessThan(0.003);
    expect(low).toBeLessThan(high);
    expect(landingSpeedSpan(buildOf(files.demo, 'buggy front'))).toBeUndefined();
  });

  it('without a spring: the touch, 0.7 √(2 · 9.81 · 0.1) = 0.98 m/s by hand', () => {
    const [build] = files.smallest.builds;
    expect(build && landingSpeedOf(build)).toBeUndefined();
    expect(shaftSpeedsOf(build).fast).toBeCloseTo(1, 9);
    expect(shaftSpeedsOf(undefined).fast).toBeCloseTo(1, 9);
  });

  it('where the gas lets nothing land: the touch, and the pages say which build does not land', () => {
    // Warm oil takes the room under a bare cap, as on the page of the landing; cold oil leaves too little for a cavity.
    const warm = changedFile(
      fileTexts.twoCars,
      'wanted: { oil: "32 wt", at: 19 °C }',
      'wanted: { oil: "32 wt", at: 40 °C }',
    );
    const parts = { ...warm, builds: [buildOf(warm, 'buggy rear')] };
    const build = buildOf(parts, 'buggy rear');
    expect(landingSpeedOf(build)).toBeUndefined();
    // Warm oil leaves so little gas that it drives the shaft out faster than half of the touch: twice that speed stands in.
    const { middle, fast } = shaftSpeedsOf(build);
    expect(middle).toBeGreaterThan(0.5);
    expect(fast).toBe(2 * middle);
    const said = (of: Parts) => speedsSentence(of.builds, shaftSpeedsOf(of.builds[0]));
    expect(said(parts)).toContain(
      'mm/s (twice the middle speed, since a landing from 10 cm is slower than that).',
    );
    const cold = { ...build, wanted: { oil: build.oil, temperature: 278.15 } };
    expect(landingSpeedOf(cold)).toBeUndefined();
    expect(shaftSpeedsOf(cold).fast).toBeCloseTo(1, 9);
    expect(said({ ...parts, builds: [cold] })).toContain(
      'fast is 1000 mm/s (the touch of a landing from 10 cm on a stiff tyre, with a guessed motion ratio; buggy rear does not land on its spring and gas).',
    );
  });
});

describe('what the speeds of a page are', () => {
  const noteOf = (parts: Parts, texts: Readonly<Record<string, string>> = {}) => {
    const table = pageOf(compareOils, parts, texts).blocks.find(
      (block) => block.kind === 'table' && block.id === 'forces',
    );
    return table?.kind === 'table' ? (table.note ?? '') : '';
  };

  test('demo: both are named by what happens to the build; a speed set by hand is a number only', () => {
    expect(noteOf(files.demo)).toContain(
      'Slow is 30 mm/s; middle is 300 mm/s (as fast as its spring lets buggy front out); fast is 1150 mm/s (as fast as buggy front goes in when it lands from 10 cm).',
    );
    const set = noteOf(files.demo, { fast: '900 mm/s', middle: '250 mm/s' });
    expect(set).toContain('middle is 250 mm/s; fast is 900 mm/s.');
  });

  test('two cars: the guess of the car is called one, with its ends', () => {
    const [, from, likely, to] = [
      ...(/fast is (\d+) mm\/s \(as fast as buggy front goes in when it lands from 10 cm; (\d+) mm\/s to (\d+) mm\/s, since what the car weighs and its motion ratio are guesses\)/u
        .exec(noteOf(files.twoCars))
        ?.slice(0, 4) ?? []),
    ].map(Number) as [number, number, number, number];
    expect([from, likely, to]).toEqual([1000, 900, 1100]);
  });

  test('smallest: both are guesses, and the page says what would settle them', () => {
    expect(noteOf(files.smallest)).toContain(
      'middle is 300 mm/s (a guess, since front, three holes names no spring); fast is 1000 mm/s (the touch of a landing from 10 cm on a stiff tyre, with a guessed motion ratio; with a spring in the file it is that of the landing).',
    );
  });

  test('headlines of oils and pistons name what happens at the middle speed', () => {
    const event = '(as fast as its spring lets buggy front out)';
    expect(pageOf(compareOils, files.demo).answer).toMatch(
      /^In rebound at 300 mm\/s \(as fast as its spring lets buggy front out\) clear 350 loses/u,
    );
    expect(pageOf(comparePistons, files.demo).answer).toContain(
      `from 30 mm/s to 300 mm/s ${event} the damping`,
    );
    expect(pageOf(compareOils, files.demo, { middle: '250 mm/s' }).answer).not.toContain(event);
  });
});

describe('how fast a build is driven', () => {
  test('landing and bump in a table of oils and pistons: in as on the page of the landing, out as far as a cavity lets it', () => {
    const row = (name: string) => rowOf(pageOf(compareOils, files.demo), 'driven', name).map(Number);
    const [goesIn = 0, comesOut = 0] = row('Landing from 10 cm');
    const said =
      /goes in with up to (\d+) mm\/s and comes out with up to (\d+) mm\/s/u.exec(
        wordsOf(pageOf(landing, files.demo)),
      ) ?? [];
    expect(Math.abs((1e3 * goesIn) / Number(said[1]) - 1)).toBeLessThan(0.005);
    expect(Math.abs((1e3 * comesOut) / Number(said[2]) - 1)).toBeLessThan(0.01);
    expect(goesIn).toBeGreaterThan(comesOut);
    // The spring alone is slower out than one that a cavity does not hold back.
    const [, freely = 0] = row('Bump 15 mm high, 150 mm long, at 6 m/s');
    const [, sprung = 0] = row('Its spring alone, from all the way in');
    expect(freely).toBeGreaterThan(sprung);
    expect(JSON.stringify(pageOf(compareOils, files.demo).blocks)).toContain(
      'it comes out fastest through a cavity that the way in left, where nothing holds it back',
    );
    expect(rowOf(pageOf(comparePistons, files.demo), 'driven', 'Landing from 10 cm').map(Number)[0]).toBe(
      goesIn,
    );
  });

  test('is worked out once for a build at hand: the same object comes back', () => {
    const build = buildOf(files.demo, 'buggy front');
    expect(eventsOf(build)).toBe(eventsOf(build));
    expect(eventsOf({ ...build })).not.toBe(eventsOf(build));
    expect(eventsOf({ ...build })).toEqual(eventsOf(build));
  });

  test('nothing is said of a build without a spring', () => {
    expect(() => rowOf(pageOf(compareOils, files.smallest), 'driven', 'Landing from 10 cm')).toThrow(
      'no table',
    );
  });
});
