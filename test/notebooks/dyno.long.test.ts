import { describe, expect, test } from 'vitest';
import { pageFigures, pagePassed } from '../../lib/page/blocks/checked-page.js';
import { withDyno } from '../../lib/parts/dyno-entry.js';
import { readParts } from '../../lib/parts/index.js';
import { notebook as measureNext } from '../../notebooks/measure-next.js';
import { notebook as whatIsWrong } from '../../notebooks/what-is-wrong.js';
import { notebook as whatYouHave } from '../../notebooks/what-you-have.js';
import { files, fileTexts, numbersIn, pageOf, tableOf, wordsOf } from './answers.js';
import { dynoRecord, type TrueShock } from './dyno-record.js';

const truth: TrueShock = { thicker: 1.1, friction: 0.25, zero: 0.1, noise: 0.1 };

/** The demo file with a record of its front build, which is its third measured shock. */
const withRecord = (record: string, zeroAt = '4 mm') =>
  readParts(withDyno(fileTexts.demo, { record, build: 'buggy front', temperature: '22 °C', zeroAt }));
const recorded = (changes: Partial<TrueShock> = {}) =>
  withRecord(dynoRecord(files.demo, 'buggy front', 22, { ...truth, ...changes }));
const which = { which: '3' };
const words = (changes: Partial<TrueShock> = {}) => wordsOf(pageOf(whatYouHave, recorded(changes), which));

describe('a shock on a dyno', () => {
  const page = pageOf(whatYouHave, recorded(), which);

  test('the intervals of the answer hold the truth', () => {
    const [oil = 0, oilHalf = 0, friction = 0, frictionHalf = 0] = numbersIn(
      page.answer,
      /behaves like ([\d.]+) ± ([\d.]+) cSt .* friction ([\d.]+) ± ([\d.]+) N/u,
    );
    // 350 cSt on the label, a tenth thicker in truth.
    expect(Math.abs(oil - 385)).toBeLessThan(oilHalf);
    expect(oilHalf).toBeLessThan(20);
    expect(Math.abs(friction - 0.25)).toBeLessThan(frictionHalf);
    expect(pagePassed(page)).toBe(true);
    expect(JSON.stringify(page)).not.toMatch(/NaN|undefined|Infinity/u);
  });

  test('the dyno lies beside the fitted band, each way by itself', () => {
    const [figure] = pageFigures(page);
    expect(figure?.alt).toContain('The lines of the dyno are means of neighbouring speeds.');
    const text = JSON.stringify(figure);
    expect(text).toContain('dyno, going in');
    expect(text).toContain('dyno, coming out');
    // 10 mm at 6 strokes a second: 377 mm/s at most, a tenth of it at least.
    const { rows } = tableOf(page, 'dyno');
    const speeds = rows.map((row) => Number(row[1]));
    expect(Math.max(...speeds)).toBeLessThan(0.377);
    expect(Math.min(...speeds)).toBeGreaterThan(0.0377);
    for (const [, , read, fitted] of rows)
      expect(Math.abs(Number(read) / Number(fitted) - 1)).toBeLessThan(0.04);
    expect(wordsOf(page)).toMatch(
      /go together at every speed; farthest apart, at [\d.]+ mm\/s .*within its doubt/u,
    );
    expect(wordsOf(page)).toContain('Both ways agree with one shock');
    // No row of hundreds of forces, and the file of the demo as it was for its other shocks.
    expect(() => tableOf(page, 'readings')).toThrow();
    expect(pageOf(whatYouHave, recorded()).answer).toBe(pageOf(whatYouHave, files.demo).answer);
  });

  test.each([
    [1.15, /the dyno shows [\d.]+ % more going in and [\d.]+ % less coming out than fitted/u],
    [0.85, /the dyno shows [\d.]+ % less going in and [\d.]+ % more coming out than fitted/u],
  ])('a piston that damps %s times as much going in is told so', (inward, said) => {
    const text = words({ inward });
    expect(text).toContain('The two ways differ by more than those of the fitted shock');
    expect(text).toMatch(said);
    expect(text).toContain('do not go together at every speed');
  });

  // Of 500 forces the order of signs is then far rarer than once in a million, below which no number is told.
  test('a curve that bends otherwise than the law is told so, and one of the law is not', () => {
    expect(words({ bent: 0.1 })).toContain(
      'off one way, then the other (by chance 1 time in 1000000): the curve bends otherwise than the law.',
    );
    expect(words()).not.toContain('bends otherwise');
  });

  test('a force far off is shown and kept, and a record one way only says so', () => {
    const lines = dynoRecord(files.demo, 'buggy front', 22, truth).split('\n');
    const bumped = lines.map((line, index) =>
      index >= 1 && index <= 7 ? line.replace(/[^;]+$/u, '99') : line,
    );
    expect(wordsOf(pageOf(whatYouHave, withRecord(bumped.join('\n')), which))).toMatch(
      /^One force of the dyno is more than 4 standard uncertainties off \(at 37\d mm\/s going in\): kept/mu,
    );
    const inward = 'speed (mm/s),force (N)\n50,2.3\n100,4.6\n200,9.6\n300,15.4\n400,22';
    const oneWay = pageOf(whatYouHave, withRecord(inward, '14 mm'), which);
    expect(wordsOf(oneWay)).toContain(
      'forces going in only; what the shock does the other way is the law’s word',
    );
    expect(
      wordsOf(
        pageOf(
          whatYouHave,
          withRecord(
            inward
              .replaceAll(/^(\d)/gmu, '-$1')
              .replaceAll(',', ',-')
              .replace('speed (mm/s),-', 'speed (mm/s),'),
            '14 mm',
          ),
          which,
        ),
      ),
    ).toContain('forces coming out only');
  });

  test.each([
    [
      'the sign turned',
      (text: string) =>
        text.replaceAll(/;(-?)([\d.]+)$/gmu, (_, sign, size) => `;${sign === '' ? '-' : ''}${size}`),
      'force',
    ],
    [
      'speed and force exchanged',
      () => 'speed (mm/s),force (N)\n2.3,50\n4.6,100\n9.6,200\n15.4,300\n22,400',
      'columns',
    ],
    ['one speed only', () => 'speed (mm/s),force (N)\n100,4\n100,4.1\n-100,-4\n-100,-4.1', 'speed'],
    [
      'a gap',
      (text: string) =>
        text
          .split('\n')
          .filter((_, index) => index < 200 || index > 240)
          .join('\n'),
      'time',
    ],
  ])('%s is refused by the name of its column', (_, change, field) => {
    const parts = withRecord(change(dynoRecord(files.demo, 'buggy front', 22, truth)));
    expect(() => pageOf(whatYouHave, parts, which)).toThrow(
      expect.objectContaining({ name: 'InputError', field }),
    );
  });

  test('the other pages of measured shocks take it too', () => {
    expect(pageOf(measureNext, recorded(), which).answer).toMatch(/the doubt of the force of buggy front/u);
    const wrong = pageOf(whatIsWrong, recorded(), which);
    expect(pagePassed(wrong)).toBe(true);
    // A tenth more viscosity than the 5 % of the label's tolerance allow.
    expect(tableOf(wrong, 'cause-sizes').rows.map(([cause]) => cause)).toContain('another oil');
  });
});
