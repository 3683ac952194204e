import { describe, expect, it } from 'vitest';
import { allBlocks } from '../../lib/page/index.js';
import { notebook } from '../../notebooks/lesson.js';
import { changedFile, fileTexts, numbersIn, pageOf, tableOf, wordsOf } from './answers.js';

describe('the leak past the rim, by hand in the lesson', () => {
  // A piston turned too small by half a millimetre, half off its centre: a good part of the oil goes round it.
  const parts = changedFile(
    fileTexts.smallest,
    'diameter: 11.92 mm\n',
    'diameter: 11.4 mm\n    off-centre: 0.5\n',
  );
  const page = pageOf(notebook, parts, { more: '6' });

  it('is taken off before the flow is shared by the holes: the formula of the page with its own numbers', () => {
    // π D h³ (1 + 1.5 ε²) Δp / (12 μ L), D at the middle of the gap; 12 mm bore, 3 mm shaft, 0.3 mm gap, 2.4 mm piston, 1 mm/s.
    const leaks: number[] = [];
    const area = (Math.PI / 4) * (11.7 ** 2 - 3 ** 2) * 1e-6;
    for (const [row, count] of tableOf(page, 'by-hand-count').rows.map(
      (one, place) => [one, [2, 6][place] ?? 0] as const,
    )) {
      const [, viscosity, drop, speed] = row.map(Number) as [number, number, number, number];
      const leak = (Math.PI * 11.7e-3 * 0.3e-3 ** 3 * (1 + 1.5 * 0.25) * drop) / (12 * viscosity * 2.4e-3);
      const through = area * 1e-3 - leak;
      leaks.push(leak / (area * 1e-3));
      expect(speed / (through / ((count * Math.PI * 1.6e-3 ** 2) / 4))).toBeCloseTo(1, 1);
    }
    // The leak is large enough to be seen in the ratio of the two rows.
    expect(leaks[0]).toBeGreaterThan(0.14);
    expect(leaks[1]).toBeLessThan(0.5 * (leaks[0] ?? 0));
    expect(wordsOf(page)).toContain('Take off the leak past the rim, π D h³ Δp / (12 μ L)');
  });

  it('its check on the page has the same numbers', () => {
    const [one, other] = tableOf(page, 'by-hand-count').rows.map((row) => Number(row[3]));
    const check = allBlocks(page).find(
      (block) => block.kind === 'check' && block.claim.includes('hole speeds by hand'),
    );
    if (check?.kind !== 'check') throw new Error('no check');
    const [byHand = 0, onPage = 0] = numbersIn(check.detail, /^([\d.]+) by hand, ([\d.]+) on the page/u);
    expect(onPage).toBeCloseTo((one ?? 0) / (other ?? 1), 2);
    expect(Math.abs(byHand / onPage - 1)).toBeLessThan(0.03);
    expect(check.passed).toBe(true);
  });
});
