import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { pagePassed } from '../../lib/page/index.js';
import { notebook } from '../../notebooks/pair.js';
import { pageOfText } from './answers.js';

// Expected values: a plain Python script (statistics.NormalDist, mean, stdev; no code of this project), run on 2026-11-25 with the times below:
// mean time, max(scatter, hand)/√n over it, friction 0.2 F/(m g − F), difference of logarithms against ln(1 + limit).

const demo = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');
const pageOf = (text: string, texts: Readonly<Record<string, string>> = {}) =>
  pageOfText(notebook, text, texts);
const texts = (page: ReturnType<typeof pageOf>): string => JSON.stringify(page.blocks);

/** Two builds: one of four shocks with known seals, one without seals of which some are timed. */
const file = (timed: string): string => `dashpot: 1
oils: [{ name: oil, base: silicone, viscosity: 350 cSt, at: 25 °C }]
pistons: [{ name: p, diameter: 11.94 mm, thickness: 2.5 mm, holes: [{ count: 2, diameter: 1.7 mm }] }]
shocks: [{ name: s, bore: 12 mm, shaft: 3 mm, stroke: 24 mm }]
builds:
  - { name: front, shock: s, piston: p, oil: oil }
  - { name: rear, shock: s, piston: p, oil: oil }
timed:
${timed}`;

describe('pair on the demo file', () => {
  test('pairs 1 with 3 and 2 with 4: times differ by 0.62 and 3.3 %, the worse pair 49 % likely to damp 5 % apart', () => {
    const page = pageOf(demo);
    expect(page.answer).toBe(
      'Of buggy front, pair shock 1 with shock 3 (times differ by 0.62 %) and shock 2 with shock 4 (times differ by 3.3 %): the worse pair is 49 % likely to damp more than 5 % apart; more repeats would make it surer.',
    );
    expect(pagePassed(page)).toBe(true);
    expect(texts(page)).toContain(
      'As listed, shock 1 with shock 2, they are 77 % likely to damp more than 5 % apart: put shock 3 with shock 1 instead of shock 2.',
    );
  });

  test('a steadier hand and a heavier weight make it sure', () => {
    const { answer } = pageOf(demo, { hand: '0.02 s', weight: '500 g' });
    expect(answer).toContain('the worse pair is 12 % likely to damp more than 5 % apart');
  });

  test('the table says the slower over the quicker less one, whatever the order in the file', () => {
    const table = pageOf(demo).blocks.find((block) => block.kind === 'table');
    const rows = table?.kind === 'table' ? table.table.rows : [];
    const differ = Object.fromEntries(rows.map(([pair, part]) => [pair, Number(part)]));
    expect(differ['shock 1 and shock 2']).toBeCloseTo(0.097772, 6);
    expect(differ['shock 3 and shock 4']).toBeCloseTo(0.126691, 6);
    // The first is the slower one here.
    expect(differ['shock 2 and shock 3']).toBeCloseTo(0.091021, 6);
  });

  test('says what friction alone does, with the number of the file and the guess', () => {
    expect(texts(pageOf(demo))).toContain(
      'with moving friction (0.18 N in the file) 20 % higher, a guess for seals of one make, a time is 3.6 % longer under 120 g',
    );
  });

  test('repeats: 2 (0.1/1.616/0.025)² = 12.3 for 5 %, and fewer for a wider limit', () => {
    expect(texts(pageOf(demo))).toContain(
      'time each shock 13 times or more; with twice the travel a quarter',
    );
    expect(texts(pageOf(demo, { limit: '10 %' }))).toContain('time each shock 4 times or more');
  });
});

describe('pair on other files', () => {
  test('never pairs across builds; an odd one is left over, one alone is named', () => {
    const page = pageOf(
      file(`  - { name: a, build: front, times: [1.0 s, 1.1 s, 1.0 s] }
  - { name: b, build: front, times: [1.2 s, 1.2 s, 1.1 s] }
  - { name: r, build: rear, times: [1.05 s] }
  - { name: c, build: front, times: [1.05 s, 1.05 s, 1.05 s] }`),
    );
    expect(page.answer).toBe(
      'Of front, pair a with c (times differ by 1.6 %); b is left over: the pair is 70 % likely to damp more than 5 % apart, so it is no pair until one of them is changed. r is the only one of rear that was timed: nothing to pair.',
    );
    expect(texts(page)).toContain('put c with a instead of b');
    expect(texts(page)).not.toContain('undefined');
    // 0.3 N is the guess where the file names no seal: 0.2 · 0.3/(1.1768 − 0.3).
    expect(texts(page)).toContain(
      '(not given, 0.3 N is a guess) 20 % higher, a guess for seals of one make, a time is 6.8 % longer',
    );
  });

  test('two that are far apart are no pair', () => {
    const { answer } = pageOf(
      file(`  - { name: a, build: front, times: [1.0 s] }
  - { name: b, build: front, times: [1.6 s] }`),
      { hand: '0.02 s', weight: '500 g' },
    );
    expect(answer).toContain('a with b (times differ by 60 %): the pair is over 99 % likely');
    expect(answer).toContain('so it is no pair until one of them is changed');
  });

  test('a weight that hardly beats the seals says so', () => {
    const page = pageOf(
      file(`  - { name: a, build: front, times: [9 s] }
  - { name: b, build: front, times: [9 s] }`),
      { weight: '50 g' },
    );
    expect(texts(page)).toContain('50 g hardly pulls harder than the seals hold');
    expect(page.answer).toContain('a with b (times alike)');
  });

  test('one timed shock of each build is refused with what is needed', () => {
    expect(() =>
      pageOf(file('  - { name: a, build: front, times: [1 s] }\n  - { name: r, build: rear, times: [1 s] }')),
    ).toThrow('timed must be 2 or more timed shocks of one build');
  });
});
