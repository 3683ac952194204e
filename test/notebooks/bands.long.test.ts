import { describe, expect, test } from 'vitest';
import { pageFigures } from '../../lib/page/index.js';
import { listNotebooks } from '../../lib/runner/build/notebook-list.js';
import { realNotebooks } from '../live/notebook-folders.js';
import { files, pageOf } from './answers.js';

/** Lines with a band, by figure: each row with its low end, the line itself and the high end. */
function bandsOf(name: string, notebook: unknown, file: keyof typeof files) {
  return pageFigures(pageOf(notebook, files[file])).flatMap(({ id, table: { columns, rows } }) => {
    const labels = columns.map(({ label }) => label);
    return labels.flatMap((label, line) => {
      const [low, high] = [labels.indexOf(`${label}, low`), labels.indexOf(`${label}, high`)];
      if (low < 0 || high < 0) return [];
      return rows.map((row) => ({
        at: `${name}, ${id}, ${label}, ${String(row[0])}`,
        ends: [row[low], row[line], row[high]] as const,
      }));
    });
  });
}

const notebooks = await listNotebooks(realNotebooks);
const banded = new Map<string, number>();

describe('a line lies within its band', () => {
  test.each(notebooks)('$name', (notebook) => {
    const rows = bandsOf(notebook.name, notebook, 'demo');
    banded.set(notebook.name, rows.length);
    const outside = rows.filter(({ ends: [low, line, high] }) => {
      if (typeof low !== 'number' || typeof high !== 'number') return false;
      const digits = 1e-9 * Math.max(Math.abs(low), Math.abs(high), 1e-12);
      return (
        low > high + digits || (typeof line === 'number' && (line < low - digits || line > high + digits))
      );
    });
    expect(outside.map(({ at, ends }) => `${at}: ${ends.join(' ')}`)).toEqual([]);
  });

  test('and bands are found where pages draw them', () => {
    for (const name of [
      'compare-oils',
      'cavitation',
      'bench-stroke',
      'warm-up',
      'order-plan',
      'pair',
      'what-you-have',
    ])
      expect(banded.get(name), name).toBeGreaterThan(2);
  });
});
