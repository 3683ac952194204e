import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { pagePassed } from '../../lib/page/index.js';
import { notebook } from '../../notebooks/match.js';
import { pageOfText } from './answers.js';

const demo = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');
const pageOf = (text: string, texts: Readonly<Record<string, string>> = {}) =>
  pageOfText(notebook, text, texts);

/** The label that a page names: `on a 505 cSt silicone`. */
const labelIn = (answer: string): number => Number(/on a (\d+) cSt silicone/u.exec(answer)?.[1]);

describe('match', () => {
  // Barry's law by hand: the same piston wants the same ρ ν. 350 cSt (at 25 °C) at 20 °C is 387 mm²/s; a bottle has that at 38 °C if it says 387/0.7817 = 495, and 1.6 % more for
  // the lighter oil; at 8 °C if it says 387/1.4278 = 271, and 1.1 % less.
  test.each([
    ['38 °C', 503],
    ['8 °C', 268],
    ['20 °C', 350],
  ])('the same piston at %s wants %d cSt', (now, label) => {
    expect(Math.abs(labelIn(pageOf(demo, { now }).answer) / label - 1)).toBeLessThan(0.012);
  });

  test('wider holes want a thicker oil, narrower ones a thinner', () => {
    const file = (diameter: string) =>
      demo.replace(/ {2}- name: four 1\.3 thin[\s\S]*?diameter: 1\.3 mm \}\]/u, (part) =>
        part.replace('count: 4, diameter: 1.3 mm', `count: 2, diameter: ${diameter}`),
      );
    const label = (diameter: string) =>
      labelIn(pageOf(file(diameter), { piston: 'four 1.3 thin', now: '20 °C' }).answer);
    expect(label('1.8 mm')).toBeGreaterThan(1.15 * label('1.7 mm'));
    expect(label('1.6 mm')).toBeLessThan(0.85 * label('1.7 mm'));
  });

  test('the nearest bottle: too hard if it is thicker than the label, too soft if thinner', () => {
    // 503 wanted: the shop has 450 and 550.
    expect(pageOf(demo, { now: '38 °C' }).answer).toContain('the nearest bottle is shop 550, 7 % too hard');
    // 387/1.0620 = 364 wanted at 22 °C: 350 is a little too soft.
    expect(pageOf(demo, { now: '22 °C' }).answer).toMatch(
      /the nearest bottle is (shop|clear) 350, \d+ % too soft/u,
    );
  });

  test('the blend is of the bottles on either side, more of the nearer one', () => {
    const [, thin, thick] =
      /([\d.]+) ml of measured 450 with ([\d.]+) ml of shop 550/u.exec(
        pageOf(demo, { now: '38 °C' }).answer,
      ) ?? [];
    expect(Number(thin) + Number(thick)).toBeCloseTo(30, 1);
    // By Arrhenius ln 505 lies 57 % of the way from ln 450 to ln 550; the measured 450 is 449 at 25 °C and thins a little less.
    expect(Number(thick)).toBeGreaterThan(15);
    expect(Number(thick)).toBeLessThan(19);
  });

  test('says which way each end is off where no oil mends it', () => {
    const page = pageOf(demo, { piston: 'four 1.3 thick', now: '20 °C' });
    const text = page.blocks.find(
      (block) => block.kind === 'text' && block.text.startsWith('What no oil mends'),
    );
    // Longer, narrower holes are more viscous: for the same damping in the middle they push harder slow and softer fast.
    expect(text?.kind === 'text' ? text.text : '').toMatch(
      /differently: \d+ % too soft at 1150 mm\/s in compression, \d+ % too hard at \d+ mm\/s in (compression|rebound)\./u,
    );
    expect(pagePassed(page)).toBe(true);
  });

  test('a heavier car wants a stiffer spring by as much, and with the old one damping by the root (Rao, sec. 2.2)', () => {
    const text = JSON.stringify(pageOf(demo, { heavier: '20 %', now: '20 °C' }).blocks);
    const [, spring, both, old] =
      /gets 20 % heavier, a spring of ([\d.]+) N\/mm and a (\d+) cSt bottle.*?with the old spring a (\d+) cSt bottle/u.exec(
        text,
      ) ?? [];
    expect(Number(spring)).toBeCloseTo(0.72, 5);
    expect(Number(both)).toBeGreaterThan(Number(old));
    expect(Number(old)).toBeGreaterThan(350);
  });

  test('the figure shows what is liked and what happens if nothing is done: two different curves', () => {
    const figure = pageOf(demo).blocks.find((block) => block.kind === 'figure');
    expect(figure?.kind === 'figure' ? figure.figure.alt : '').toMatch(/and with nothing done/u);
    const [, liked, exact, nothing] =
      /at 300 mm\/s it is ([\d.]+) N and ([\d.]+) N, and with nothing done ([\d.]+) N/u.exec(
        figure?.kind === 'figure' ? figure.figure.alt : '',
      ) ?? [];
    expect(Number(exact) / Number(liked)).toBeCloseTo(1, 1);
    expect(Number(nothing)).toBeLessThan(0.85 * Number(liked));
  });
});
