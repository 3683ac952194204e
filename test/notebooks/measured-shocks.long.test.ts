import { describe, expect, test } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { pageFigures, pagePassed } from '../../lib/page/blocks/checked-page.js';
import { assembleShock } from '../../lib/parts/assembly/assembled-shock.js';
import { notebook as measureNext } from '../../notebooks/measure-next.js';
import { notebook as whatIsWrong } from '../../notebooks/what-is-wrong.js';
import { notebook as whatYouHave } from '../../notebooks/what-you-have.js';
import { changedFile, files, fileTexts, numbersIn, pageOf, rowOf, tableOf, wordsOf } from './answers.js';

// The times of the demo file were drawn from two shocks that do not exist: both with 338 cSt where the label says 350, the left with holes 8 µm and
// the right with holes 60 µm larger than drilled, friction 0.21 N and 0.17 N, a hand 0.03 s late.
const truth = {
  oil: 338e-6,
  left: { larger: 8e-6, friction: 0.21 },
  right: { larger: 60e-6, friction: 0.17 },
};

/** Force of a shock of the demo file with the true oil and holes [N]. */
function trueForce(larger: number, speed: number): number {
  const build = files.demo.builds.find(({ name }) => name === 'buggy rear');
  if (build === undefined) throw new Error('no buggy rear');
  const { damper } = assembleShock(build);
  const holes = damper.piston.holes.map((group) => ({ ...group, diameter: group.diameter + larger }));
  const state = fluidAt(createOil(build.oil.definition), 294.35);
  const oil = { ...state, kinematicViscosity: (state.kinematicViscosity * truth.oil) / 350e-6 };
  const model = damperModel({ ...damper, piston: { ...damper.piston, holes } }, oil);
  return damperForce(model, { speed, position: 0.015 }).dampingForce;
}

const answerParts =
  /behaves like (\d+) ± (\d+) cSt .* friction ([\d.]+) ± ([\d.]+) N; at 300 mm\/s it pushes back with ([\d.]+) ± ([\d.]+) N/u;

describe('what you have', () => {
  test.each([
    ['1', truth.left],
    ['2', truth.right],
  ])('shock %s: the intervals of the answer hold the truth', (which, { larger, friction }) => {
    const page = pageOf(whatYouHave, files.demo, { which });
    const [viscosity = 0, half = 0, rubbing = 0, rubbingHalf = 0, force = 0, forceHalf = 0] = numbersIn(
      page.answer,
      answerParts,
    );
    // Through holes as stated, larger holes look like thinner oil: damping goes with the hole to about the power −3.8 (laminar with end losses).
    const equivalent = 338 * ((0.0013 + larger) / 0.0013) ** -3.8;
    expect(Math.abs(viscosity - equivalent)).toBeLessThan(half + 0.05 * equivalent);
    expect(Math.abs(rubbing - friction)).toBeLessThan(rubbingHalf);
    expect(Math.abs(force - trueForce(larger, 0.3))).toBeLessThan(forceHalf);
    expect(pagePassed(page)).toBe(true);
  });

  test('the label is doubted where the holes are much larger, and only there', () => {
    expect(pageOf(whatYouHave, files.demo).answer).toContain('Both fit: no reason to doubt the label.');
    const { answer } = pageOf(whatYouHave, files.demo, { which: '2' });
    const [larger = 0] = numbersIn(answer, /another oil, or holes ([\d.]+) mm larger than stated/u);
    expect(Math.abs(larger - 0.06)).toBeLessThan(0.03);
    expect(answer).toContain('These readings cannot tell which; a pin gauge can.');
  });

  test('slower times mean thicker oil, a harder shock, and smaller holes', () => {
    const light = fileTexts.demo.replace(
      '2.94 s, 3.17 s, 3.06 s, 2.99 s, 3.09 s',
      '5.14 s, 5.37 s, 5.26 s, 5.19 s, 5.29 s',
    );
    expect(light).not.toBe(fileTexts.demo);
    const heavy = [
      '1.01 s, 0.85 s, 0.94 s, 0.80 s, 0.89 s',
      '1.71 s, 1.55 s, 1.64 s, 1.50 s, 1.59 s',
    ] as const;
    const slower = changedFile(light, ...heavy);
    const [before, later] = [files.demo, slower].map((parts) =>
      numbersIn(pageOf(whatYouHave, parts).answer, answerParts),
    );
    expect(later?.[0]).toBeGreaterThan(1.4 * (before?.[0] ?? 0));
    expect(later?.[4]).toBeGreaterThan(before?.[4] ?? 0);
    expect(pageOf(whatYouHave, slower).answer).toMatch(
      /another oil, or holes [\d.]+ mm smaller than stated/u,
    );
  });

  test('an odd repeat is shown and kept; the line is solid where measured and the law beyond', () => {
    const odd = changedFile(
      fileTexts.demo,
      '2.94 s, 3.17 s, 3.06 s, 2.99 s, 3.09 s',
      '3.04 s, 3.05 s, 3.06 s, 3.05 s, 3.60 s',
    );
    const page = pageOf(whatYouHave, odd);
    expect(wordsOf(page)).toContain(
      'Time 5 of 50 g by hand at 21 °C, 3.6 s, is odd (Grubbs): kept, and marked.',
    );
    expect(tableOf(page, 'readings').rows).toHaveLength(10);
    // 22 mm in 3.6 s and in 0.8 s.
    expect(pageFigures(page)[0]?.alt).toContain('Measured from 6.11 mm/s to 27.5 mm/s');
  });

  test('a file without measurements is told what to measure, a shock that is not there which there are', () => {
    expect(() => pageOf(whatYouHave, files.smallest)).toThrow('a weight hung on the shaft and timed will do');
    expect(() => pageOf(whatYouHave, files.demo, { which: '3' })).toThrow(
      '1 to 2: rear left (buggy rear), rear right (buggy rear)',
    );
  });
});

describe('measure next', () => {
  const page = pageOf(measureNext, files.demo);

  test('a heavier weight on film halves the doubt of two weights by hand', () => {
    const [minutes = 0, before = 0, after = 0] = numbersIn(
      page.answer,
      /Next, film 200 g .*, (\d+) minutes: .* falls from ([\d.]+) % to ([\d.]+) %/u,
    );
    expect(minutes).toBe(12);
    expect(after).toBeLessThan(before / 2);
    expect(pagePassed(page)).toBe(true);
  });

  test('the table is in order of the doubt left, and a better clock on the same weights brings less than a new weight', () => {
    const { rows } = tableOf(page, 'next-readings');
    const left = rows.map((row) => Number(row[2]));
    expect([...left].sort((first, second) => first - second)).toEqual(left);
    const leftBy = (name: string): number => Number(rowOf(page, 'next-readings', name)[1]);
    expect(leftBy('film 50 g at 240 frames a second, 3 times')).toBeGreaterThan(
      leftBy('film 200 g at 240 frames a second, 3 times'),
    );
    expect(leftBy('time 50 g by hand, 5 times')).toBeGreaterThan(
      leftBy('film 50 g at 240 frames a second, 3 times'),
    );
  });

  test('a law that is 20 % off makes all further measuring idle, and the page says enough', () => {
    const { answer } = pageOf(measureNext, files.demo, { law: '20 %' });
    expect(answer).toMatch(/^Enough: the doubt .* is 2[01] %/u);
  });

  test('a reading that tells little by itself is named with the one that makes it tell', () => {
    const first = pageOf(measureNext, files.smallest);
    const [before = 0, alone = 0, both = 0] = numbersIn(
      first.answer,
      /falls from ([\d.]+) % to ([\d.]+) %, and to ([\d.]+) % once you also push the shaft on a scale/u,
    );
    expect(alone).toBeGreaterThan(0.8 * before);
    expect(both).toBeLessThan(alone / 2);
    const pairs = tableOf(first, 'next-pairs').rows.filter(([names]) =>
      String(names).includes('film 100 g at 240'),
    );
    expect(Math.min(...pairs.map(([, , left]) => 100 * Number(left)))).toBeCloseTo(both, 1);
  });

  test('before any reading it says where to begin', () => {
    expect(pageOf(measureNext, files.smallest).answer).toMatch(/^Next, .* minutes: the doubt of the force/u);
  });
});

describe('what is wrong', () => {
  test('the left shock came out as planned, the right one did not', () => {
    expect(pageOf(whatIsWrong, files.demo).answer).toContain('rear left (buggy rear) came out as planned');
    const page = pageOf(whatIsWrong, files.demo, { which: '2' });
    expect(page.answer).not.toContain('as planned');
    const { rows } = tableOf(page, 'cause-sizes');
    const place = rows.findIndex(([cause]) => cause === 'a larger drill');
    expect(place).toBeGreaterThanOrEqual(0);
    expect(place).toBeLessThanOrEqual(2);
    // The true 60 µm, within what oil and thermometer may add.
    const [, size = ''] = rows[place] ?? [];
    expect(Math.abs((numbersIn(String(size), /holes ([\d.]+) mm larger/u)[0] ?? 0) - 0.06)).toBeLessThan(
      0.025,
    );
    expect(rows.at(-1)?.[0]).toBe('as planned');
    expect(pagePassed(page)).toBe(true);
  });

  test('a pin gauge that finds the holes large takes the other causes away', () => {
    const gauged = changedFile(
      fileTexts.demo,
      'measurements:\n',
      'measurements:\n  - { shock: rear right, build: buggy rear, hole: { diameter: 1.36 mm, by: pin gauge } }\n',
    );
    const page = pageOf(whatIsWrong, gauged, { which: '1' });
    expect(page.answer).toContain('a larger drill');
    const { rows } = tableOf(page, 'cause-sizes');
    expect(rows[0]?.[0]).toBe('a larger drill');
    expect(Number(rows[0]?.[2])).toBeGreaterThan(0.8);
  });

  test('the reading that would tell is one that the two causes answer differently', () => {
    const { answer } = pageOf(whatIsWrong, files.demo, { which: '2' });
    expect(answer).toMatch(/To tell the two apart, .*, \d+ minutes\./u);
  });
});

test.each([whatYouHave, measureNext, whatIsWrong] as const)(
  '$name: a number in the answer, one figure after it, a check, cautions, the same page twice',
  (notebook) => {
    const page = pageOf(notebook, files.demo);
    expect(page.answer).toMatch(/\d/u);
    expect(page.blocks[0]?.kind).toBe('figure');
    expect(page.blocks.some(({ kind }) => kind === 'check')).toBe(true);
    expect(
      page.blocks.some((block) => block.kind === 'caution' && block.text.includes('hung weight can fall')),
    ).toBe(true);
    expect(JSON.stringify(page)).not.toMatch(/NaN|undefined|Infinity/u);
    expect(pageOf(notebook, files.demo)).toEqual(page);
  },
);
