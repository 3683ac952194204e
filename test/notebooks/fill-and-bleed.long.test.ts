import { describe, expect, it } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { pageFigures, pagePassed } from '../../lib/page/index.js';
import { builtShock } from '../../notebooks/build-sheet/built-shock.js';
import { deadBandAt } from '../../notebooks/fill-and-bleed/air-figures.js';
import { notebook } from '../../notebooks/fill-and-bleed.js';
import { changedFile, files, fileTexts, numbersIn, pageOf, rowOf, wordsOf } from './answers.js';

const builds = Object.entries(files).flatMap(([file, parts]) =>
  parts.builds.map(({ name }) => ({ file, name, parts })),
);

describe.each(builds)('$file, $name', ({ parts, name }) => {
  const page = pageOf(notebook, parts, { build: name });

  it('passes its own checks', () => expect(pagePassed(page)).toBe(true));

  it('says no number that is none, and no limit', () => {
    expect(JSON.stringify([page.answer, page.blocks])).not.toMatch(
      /NaN|Infinity|undefined|at most -|−\d+ mm/u,
    );
    expect(wordsOf(page)).not.toMatch(/tears|whatever the oil/u);
  });

  it('names friction a guess in the first sentence that uses it, unless it is given', () => {
    const measured = files.demo === parts;
    expect(/seals hold [^.]*a guess/u.test(page.answer)).toBe(
      !measured && !page.answer.includes('locks before'),
    );
  });
});

// By hand. The shaft of 3 mm displaces π/4 · 9 mm² · 24 mm = 0.16965 ml. Hollow 0.6 ml and 0.3 ml drawn off leave 0.9 ml of gas at 1 atm if closed fully out.
// Closed fully in, 0.16965 ml of what was drawn off is the shaft: 0.73035 ml of gas. 1 atm · 7.0686 mm² = 0.71622 N = 73.034 g.
const inGrams = 73.034;
const swept = 0.169646;

it('a day of which two temperatures print alike has one line for both', () => {
  const page = pageOf(notebook, files.smallest, { coldest: '20 °C', hottest: '20.004 °C', bench: '5 °C' });
  const lines = pageFigures(page)
    .find(({ id }) => id === 'push-by-temperature')
    ?.table.columns.map(({ label }) => label);
  expect(lines?.slice(1)).toEqual(['5 °C', '20 °C']);
});

describe('the front shock of the demo', () => {
  const page = pageOf(notebook, files.demo);

  it('costs what its habit costs', () => {
    const [inOut, outOut] = rowOf(page, 'closing-habits', 'closed fully out');
    expect(inOut).toBeCloseTo(inGrams * (0.9 / (0.9 - swept) - 1), 2);
    expect(outOut).toBeCloseTo(0, 6);
    const [inIn, outIn, gas] = rowOf(page, 'closing-habits', 'closed fully in');
    const part = (0.9 - swept) / 0.9;
    expect(inIn).toBeCloseTo(0, 6);
    expect(outIn).toBeCloseTo(inGrams * (part - 1), 2);
    expect(gas).toBeCloseTo(101_325 * part, -1);
    const [, outHalf] = rowOf(page, 'closing-habits', 'closed half way in');
    expect(outHalf).toBeCloseTo(inGrams * ((0.9 - swept / 2) / 0.9 - 1), 2);
  });

  it('says it in that direction', () => {
    const [inward, out, sucked, not, slow, fast] = numbersIn(
      page.answer,
      /Closed fully in and not fully out, its gas stands at ([\d.]+) bar instead of ([\d.]+) bar with the shaft out, the shaft there is sucked in with (\d+) g instead of (\d+) g, and cavitation begins pushed in at ([\d.]+) mm\/s instead of ([\d.]+) mm\/s/u,
    );
    expect([inward, out, sucked, not]).toEqual([0.822, 1.01, 14, 0]);
    expect(slow).toBeLessThan(fast ?? 0);
    // Straight holes: between the square root and the first power of the pressure that drives the oil.
    expect((slow ?? 0) / (fast ?? 1)).toBeGreaterThan(0.811);
    expect((slow ?? 0) / (fast ?? 1)).toBeLessThan(0.901);
  });

  it('stays where it is put while 18 g of seals hold 15 g of gas', () => {
    // 21.6 mm in: 0.15268 ml gone of 0.9 ml; 0.18 N are 18.4 g.
    expect(page.answer).toMatch(
      /^buggy front, .* stays wherever it is put: .* pushes out with up to 15 g, and its seals hold 18 g\./u,
    );
    const loose = changedFile(fileTexts.demo, 'moving-friction: 0.18 N', 'moving-friction: 0.12 N');
    expect(pageOf(notebook, loose).answer).toMatch(/does not stay where it is put.* hold 12 g/u);
  });

  it('loses travel to bubbles, less after each bleed', () => {
    const rows = ['as it is closed', 'bled once more', 'twice more'].map((name) =>
      rowOf(page, 'bled-again', name),
    );
    const [air, lost, , out] = (rows[0] ?? []).map(Number);
    // 1 % of 4.09 ml is a guess of the file reader; bore less half the gap less shaft: π/4 (11.97² − 3²) mm² = 105.46 mm².
    expect(air).toBeCloseTo(0.0409e-6, 9);
    expect(lost).toBeCloseTo((air ?? 0) / 105.46e-6, 6);
    expect(out).toBeCloseTo(0, 6);
    const airs = rows.map(([volume]) => Number(volume));
    expect(airs[1]).toBeLessThan((airs[0] ?? 0) / 2);
    expect(airs[2]).toBeLessThan(airs[1] ?? 0);
    // Less gas pushes harder with the shaft fully in.
    const gas = 0.9 - 1e6 * ((airs[0] ?? 0) - (airs[1] ?? 0));
    expect(rows[1]?.[2]).toBeCloseTo(inGrams * (gas / (gas - swept) - 1), 2);
    expect(Number(rows[1]?.[2])).toBeGreaterThan(Number(rows[0]?.[2]));
  });

  it('lets air go into the oil where it stands squeezed, and sucks afterwards', () => {
    // 3.190 ml of oil hold 0.179 of their volume. Stood fully in: p (0.9 − 0.16965 + D) = p₀ (0.9 + D); then without that, p' 0.9 = p (0.9 − 0.16965).
    const dissolved = 0.179 * 3.1895;
    const stood = (0.9 + dissolved) / (0.9 - swept + dissolved);
    const [inward, out] = rowOf(page, 'left-standing', 'stood fully in');
    expect(inward).toBeCloseTo(inGrams * (stood - 1), 1);
    expect(out).toBeCloseTo(inGrams * ((stood * (0.9 - swept)) / 0.9 - 1), 1);
    expect(Number(out)).toBeLessThan(0);
  });

  it('frees bubbles by an outward stroke', () => {
    expect(wordsOf(page)).toMatch(/comes free as the shaft is pulled out/u);
  });
});

describe('its checks', () => {
  const details = pageOf(notebook, files.demo).blocks.flatMap((block) =>
    block.kind === 'check' ? [block] : [],
  );

  it('add up the work of a whole slow stroke', () => {
    // By hand: closed fully out 0.9 ml at 1 atm, of which the shaft takes 0.169646 ml in 24 mm: p (V ln(V/(V − s)) − s).
    const [added, byLaw] = numbersIn(
      details.map(({ detail }) => detail).join(' '),
      /([\d.]+) mJ added up, ([\d.]+) mJ by the law/u,
    );
    const work = 101.325 * (0.9 * Math.log(0.9 / (0.9 - swept)) - swept);
    expect(added).toBeCloseTo(work, 3);
    expect(byLaw).toBeCloseTo(work, 3);
  });
});

describe('a build of another file', () => {
  it('takes friction as a band where nobody measured it', () => {
    // 18.9 of 21 mm: 0.13360 ml of 0.579 ml gone: 22 g, between 10 and 102 g.
    expect(pageOf(notebook, files.twoCars).answer).toMatch(
      /stays where it is put or not, as its seals are: .* out with up to 22 g, and its seals hold 10 g to 102 g \(typically 31 g; a guess\)/u,
    );
    // Twice the shaft is the gas: 1.81 of 2.03 parts left squeezed at nine tenths of the stroke.
    expect(pageOf(notebook, files.smallest).answer).toMatch(/if the gas inside is as much as guessed/u);
    expect(wordsOf(pageOf(notebook, files.smallest))).toContain('To measure how much gas makes room');
  });

  it('says gently that a bleed cap with nothing under it locks on a hot day', () => {
    const words = wordsOf(pageOf(notebook, files.twoCars, { build: 'buggy rear' }));
    expect(words).toMatch(
      /On oil of 34 °C the shaft of this model, whose body does not give, stops [\d.]+ mm before the end of its stroke\. Real bodies, caps and seals give more/u,
    );
  });

  it.each([26, 27, 28, 29])('has an end at a stroke of %i mm', (stroke) => {
    const longer = changedFile(fileTexts.smallest, 'stroke: 23 mm', `stroke: ${stroke} mm`);
    expect(pagePassed(pageOf(notebook, longer))).toBe(true);
  });

  it.each(['shaft', 'blind'])('names the direction of what is lost for gas on the %s side', (side) => {
    const other = changedFile(
      fileTexts.demo,
      'compensator: { kind: air-pocket }',
      `compensator: { kind: air-pocket, side: ${side}-side }`,
    );
    const words = wordsOf(pageOf(notebook, other));
    expect(words).toContain(
      side === 'shaft' ? 'the way out loses more than the way in' : 'the way in loses more than the way out',
    );
    expect(words).toContain(
      side === 'shaft' ? 'cavitation begins pulled out' : 'cavitation begins pushed in',
    );
  });

  it('has no dead travel and no onset with the gas mixed through', () => {
    const mixed = changedFile(
      fileTexts.smallest,
      '    stroke: 23 mm',
      '    stroke: 23 mm\n    compensator: { kind: emulsion }',
    );
    const page = pageOf(notebook, mixed);
    expect(pageFigures(page).map(({ id }) => id)).not.toContain('dead-band');
    expect(page.answer).not.toContain('cavitation begins');
  });
});

describe('travel lost to air', () => {
  it('is V α Δp/(A p) · ln 10 of a slow piston, for the oil that the stroke leaves away from the gas', () => {
    const build = files.demo.builds.find(({ name }) => name === 'buggy front');
    if (build === undefined) throw new Error('no build');
    const built = builtShock(build, 293.15, {});
    // Half of 24 mm behind a piston of 12 mm with a shaft of 3 mm: π/4 · (144 − 9) mm² · 12 mm = 1.2723 ml. Gas at 1.1 bar there at most: 0.0848 of 0.9 ml are gone.
    const [volume, area] = [1.2723e-6, 106.03e-6];
    const model = damperModel(built.assembled.damper, fluidAt(built.oil, 293.15));
    const [air, speed] = [0.1, 1e-5];
    const steady = Math.abs(damperForce(model, { speed: -speed, position: 0.012 }).dampingForce) / area;
    const atOneAtmosphere = ((volume * air * steady) / (area * 101_325)) * Math.LN10;
    const lost = deadBandAt(built, 293.15, air, -speed) ?? Number.NaN;
    expect(lost / atOneAtmosphere).toBeGreaterThan(0.8);
    expect(lost / atOneAtmosphere).toBeLessThan(1.02);
  });
});

it('says which bubbles it takes: radii of 0.05 mm to 1 mm, a tenth of the air drawn in again', () => {
  expect(JSON.stringify(pageOf(notebook, files.demo).blocks)).toContain(
    'Bubbles from 0.1 to 2 mm across, spread evenly over the logarithm of size; each opening of the cap draws in 10 % of the first air again.',
  );
});

describe('what it refuses', () => {
  it('names the setting', () => {
    expect(() => pageOf(notebook, files.demo, { coldest: '50 °C' })).toThrow(/coldest/u);
    expect(() => pageOf(notebook, files.twoCars, { build: 'buggy rear', freeAir: '0 ml' })).toThrow(
      /freeAir.*nothing but bubbles/u,
    );
  });
});
