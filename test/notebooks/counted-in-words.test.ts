import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { type Page, pageFigures } from '../../lib/page/index.js';
import { assembleShock, readParts } from '../../lib/parts/index.js';
import { handChecks } from '../../notebooks/base/by-hand.js';
import { drivenAtWork } from '../../notebooks/base/driven-at-work.js';
import { requireRides } from '../../notebooks/bench-stroke/recorded.js';
import { answerSentence, onTheWayOut } from '../../notebooks/bench-stroke/words.js';
import { notebook as benchStroke } from '../../notebooks/bench-stroke.js';
import { notebook as compareBuilds } from '../../notebooks/compare-builds.js';
import { notebook as comparePistons } from '../../notebooks/compare-pistons.js';
import { notebook as dayPlan } from '../../notebooks/day-plan.js';
import { notebook as holeSize } from '../../notebooks/hole-size.js';
import { notebook as pair } from '../../notebooks/pair.js';
import { answerOf } from '../../notebooks/spread/wording.js';
import { changedFile, files, fileTexts, pageOf, rowOf, tableOf, wordsOf } from './answers.js';
import { buildOf, third } from './landing-cases.js';

// Counts and sizes that stand inside a sentence, where the files of words have a # for each number.

const rare = readParts(readFileSync(new URL('../parts/files/rare.yaml', import.meta.url), 'utf8'));
const checkOf = ({ blocks }: Page) => blocks.find(({ kind }) => kind === 'check');

test('how many of the dampings by hand are near, and one that is not', () => {
  const cases = (['usual', 'close fit', 'squeezed gas'] as const).map((name) => {
    const build = buildOf(rare, name);
    const fluid = fluidAt(createOil(build.oil.definition), 293.15);
    return { name, model: damperModel(assembleShock(build).damper, fluid) };
  });
  expect(handChecks(cases)[0]?.detail).toMatch(/^2 of 3 within 3 %; squeezed gas: /u);
  expect(handChecks(cases.slice(0, 2))[0]?.detail).toMatch(/^2 of 2 within 3 %; usual: /u);
});

// 4 shocks make 4 · 3/2 pairs; 3 and 3 of two builds 3 and 3.
test('how many pairs the likelihood was integrated for', () => {
  expect(checkOf(pageOf(pair, files.demo))).toMatchObject({
    passed: true,
    detail: expect.stringMatching(/^6 pairs, largest difference \d\.\de-\d+$/u),
  });
  expect(checkOf(pageOf(pair, rare))).toMatchObject({ detail: expect.stringMatching(/^6 pairs/u) });
});

// Means of 1.832 s and 1.616 s: 13.4 %.
test('how much longer the slowest shock took than the quickest', () => {
  const [figure] = pageFigures(pageOf(pair, files.demo));
  expect(figure?.alt).toMatch(
    /^shock 4 took 13 % longer than shock 1; shocks whose dots are closer than 5 %/u,
  );
});

// 10 mm in half a millisecond, a second after the first row.
test('a jump late in a recording is told by its speed and row', () => {
  const travels = [0.002, 0.002, 0.012];
  expect(() => requireRides(buildOf(files.demo, 'buggy front'), { times: [0, 1, 1.0005], travels })).toThrow(
    /at most 10000 mm\/s from row to row.*got 20000 mm\/s in row 3/u,
  );
});

test('a drill that may be off by more than its smallest hole is not asked what it does', () => {
  const asked = { piston: 'two 1.5 two 1.2', drill: '0.05 mm' };
  expect(wordsOf(pageOf(holeSize, files.demo, asked))).toMatch(
    /The file lets the drill be off by 0\.03 mm: at .* less damping where it cuts wide/u,
  );
  const small = changedFile(fileTexts.demo, 'hole-diameter: 0.03 mm', 'hole-diameter: 0.9 mm');
  const narrow = {
    ...small,
    pistons: small.pistons.map((part) =>
      part.name === 'two 1.5 two 1.2'
        ? {
            ...part,
            piston: {
              ...part.piston,
              holes: [
                { count: 2, diameter: 1.5e-3 },
                { count: 2, diameter: 0.8e-3 },
              ],
            },
          }
        : part,
    ),
  };
  expect(wordsOf(pageOf(holeSize, narrow, asked))).not.toContain('The file lets the drill be off');
});

// Half of 24 mm and 10 mm to each side.
test('how far in the shock at work is at most', () => {
  const motion = pageOf(benchStroke, files.demo, { amplitude: '10 mm' }).blocks.find(
    ({ kind }) => kind === 'motion',
  );
  expect(motion).toMatchObject({ alt: expect.stringContaining('at most 22 mm in, pushing') });
});

test('where one end of what air does pulls and another pushes, the shock is said to hold back', () => {
  const stroked = (smallest: number) => ({
    cycle: { largestForce: { value: 5 }, smallestForce: { value: smallest }, work: 0.2 },
    figures: { equivalentDamping: 3 },
  });
  const asked = { build: buildOf(files.demo, 'buggy front'), wave: 'sine', amplitude: 0.01, frequency: 5 };
  const said = (...smallest: readonly number[]) =>
    answerSentence(smallest.map(stroked) as never, { ...asked, temperature: 293.15 } as never);
  expect(said(-1, 0.5)).toContain(
    'and holds back with at most −0.5 to 1 N coming out; each stroke to and fro takes 0.2 J',
  );
  expect(said(0.4, 0.5)).toContain('and still pushes with at least 0.4 to 0.5 N coming out;');
  // 2π · 5 Hz · 10 mm.
  expect(said(-1)).toMatch(/^At 5 Hz and 10 mm to each side, up to 314 mm\/s, buggy front/u);
});

// 90 % of 24 mm about its middle.
test('how far in a shock is at most that is driven once', () => {
  const { drawing } = drivenAtWork(buildOf(files.demo, 'buggy front'), 293.15, 0.3) ?? {};
  expect(drawing?.alt).toContain('at most 22.8 mm in, pushing');
});

test('a strong gas still pushes on the way out, any other shock holds back', () => {
  expect(onTheWayOut(-3, -2.5)).toBe('holds back with 3 N and 2.5 N');
  expect(onTheWayOut(0.2, 0.4)).toBe('still pushes with 0.2 N and 0.4 N');
  expect(onTheWayOut(-0.2, 0.4)).toBe('holds back with 0.2 N and −0.4 N');
});

// 58 mm + (49 − 11 − 2) mm + 8 mm fully out, less 30 % of 30 mm.
test('from eyelet to eyelet where the shaft is wanted', () => {
  const page = pageOf(compareBuilds, files.demo, { sag: '30 %' });
  expect(rowOf(page, 'ride', 'Eyelet to eyelet there')[1]).toBe('93 mm');
});

test('where pistons pack is drawn from rest, where the damping is that of slow oil, to the fast speed', () => {
  const page = pageOf(comparePistons, files.demo, { fast: '900 mm/s' });
  const rows = pageFigures(page).find(({ id }) => id === 'pack')?.table.rows ?? [];
  expect(rows[0]?.slice(0, 2).map(Number)).toEqual([0, expect.closeTo(1, 9)]);
  expect(Number(rows.at(-1)?.[0])).toBeCloseTo(0.9, 12);
});

test('a file without a day warms evenly from the coldest to the hottest of the controls', () => {
  const page = pageOf(dayPlan, third, { coldest: '10 °C', hottest: '24 °C', worthwhile: '60 %' });
  const shown = tableOf(page, 'day-1').rows.map(([time, oil]) => `${time} ${oil}`);
  expect(shown).toEqual([
    '08:00 10 °C',
    '09:00 12 °C',
    '10:00 14 °C',
    '11:00 16 °C',
    '12:00 18 °C',
    '13:00 20 °C',
    '14:00 22 °C',
    '15:00 24 °C',
  ]);
});

test('left and right are alike where nothing that differs between them may be off', () => {
  const none = {
    own: undefined,
    shared: undefined,
    draws: () => new Float64Array(),
    together: () => [],
    pairs: [],
  };
  expect(answerOf(none, [-0.03, -0.3, 1])).toBe(
    'In rebound at 300 mm/s left and right are alike, since no size that differs between them may be off. Nothing that all shocks of the car share may be off.',
  );
});
