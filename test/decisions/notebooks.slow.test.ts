import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import { pageFigures, pagePassed } from '../../lib/page/blocks/checked-page.js';
import type { Page } from '../../lib/page/blocks/page.js';
import type { Notebook } from '../../lib/page/notebook.js';
import { readParameterValues } from '../../lib/page/parameters/read-parameters.js';
import { readParts } from '../../lib/parts/read-parts.js';
import { notebook as dayPlan } from '../../notebooks/day-plan.js';
import { notebook as match } from '../../notebooks/match.js';
import { notebook as orderPlan } from '../../notebooks/order-plan.js';
import { notebook as pair } from '../../notebooks/pair.js';
import { notebook as spread } from '../../notebooks/spread.js';
import { notebook as whatToDrill } from '../../notebooks/what-to-drill.js';

const demo = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');
const parts = readParts(demo);

function pageOf<Any extends Notebook>(
  notebook: Any,
  texts: Readonly<Record<string, readonly string[]>> = {},
): Page {
  return notebook.run(parts, readParameterValues(notebook.parameters, texts, parts));
}

const all = {
  'day-plan': dayPlan,
  match,
  'order-plan': orderPlan,
  pair,
  spread,
  'what-to-drill': whatToDrill,
} as unknown as Readonly<Record<string, Notebook>>;

describe('decision notebooks on the demo parts', () => {
  for (const [name, notebook] of Object.entries(all)) {
    it(`${name}: one figure right after the answer, all checks passed, the same page twice`, () => {
      const page = pageOf(notebook);
      expect(notebook.name).toBe(name);
      expect(page.answer).toMatch(/\d/u);
      expect(page.blocks[0]?.kind).toBe('figure');
      expect(page.blocks.some(({ kind }) => kind === 'check')).toBe(true);
      expect(pagePassed(page)).toBe(true);
      expect(pageFigures(page).length).toBeGreaterThan(0);
      expect(JSON.stringify(page)).not.toMatch(/NaN|undefined|Infinity/u);
      expect(pageOf(notebook)).toEqual(page);
    });

    it(`${name}: runs where there is no Node`, async () => {
      const entry = fileURLToPath(new URL(`../../notebooks/${name}.ts`, import.meta.url));
      const { outputFiles, warnings } = await build({
        entryPoints: [entry],
        bundle: true,
        platform: 'browser',
        format: 'esm',
        minify: true,
        write: false,
        external: ['vega', 'vega-lite'],
      });
      expect(warnings).toEqual([]);
      // What a page pays for the physics and the plan, beside the drawing. The fast speed is that of a landing, so that all but two let a corner of the car land: 29 kB of motion.
      expect(outputFiles[0]?.contents.length).toBeLessThan(196_000);
    });
  }

  it('a tolerance that no shelf meets is said, not hidden', () => {
    const page = pageOf(orderPlan, { tolerance: ['2 %'], blend: ['1'] });
    expect(page.answer).toContain('nothing serves it at');
  });

  it('what to fill adds up to the parts of a blend at every temperature, for each build', () => {
    const page = pageOf(orderPlan, { blend: ['8'] });
    const tables = page.blocks.flatMap((block) =>
      block.kind === 'table' && block.id.startsWith('fills-') ? [block.table] : [],
    );
    expect(tables.length).toBe(3);
    for (const { rows } of tables) {
      expect(rows.map(([at]) => at)).toEqual([8, 13, 18, 23, 28, 33, 38].map((at) => `${at} °C`));
      for (const row of rows)
        expect(row.slice(1, -1).reduce((sum: number, cell) => sum + Number(cell), 0)).toBe(8);
    }
  });

  it('without timed shocks the pair page says what is missing', () => {
    const none = readParts(demo.replace(/^timed:[\s\S]*?\n\n/mu, ''));
    expect(() => pair.run(none, readParameterValues(pair.parameters, {}, none))).toThrow(InputError);
  });

  it('a wider piston is answered with what no oil mends', () => {
    const page = pageOf(match, { piston: ['four 1.3 thick'] });
    expect(JSON.stringify(page.blocks)).toContain('What no oil mends');
  });

  it('what to drill: forces that are given come before those of the build', () => {
    const given = { 'slow-compression': ['1.2 N'], 'slow-rebound': ['1.3 N'], 'middle-rebound': ['15 N'] };
    const page = pageOf(whatToDrill, given);
    expect(page.answer).toContain('For the forces you want, drill');
    const table = page.blocks.find((block) => block.kind === 'table' && block.id === 'forces');
    const wanted = table?.kind === 'table' ? table.table.rows.map((row) => row[1]) : [];
    expect(wanted).toEqual([1.2, 1.3, expect.any(Number), 15]);
  });

  it('what to drill: the same damping is that of the piston one has', () => {
    const page = pageOf(whatToDrill, { 'slow-harder': ['0 %'], 'middle-harder': ['0 %'] });
    expect(page.answer).toContain('buggy front as it is, drill 2 holes of 1.7 mm into');
    expect(page.answer).toContain('at 30 mm/s it is right on and at 300 mm/s right on');
  });

  it('what to drill: says where nothing is robust, where nothing fits, and where there is too much to try', () => {
    expect(pageOf(whatToDrill, { robust: ['1 %'] }).answer).toContain('none of the nearest is robust');
    const huge = pageOf(whatToDrill, { smallest: ['3.9 mm'], largest: ['4 mm'], taper: ['0 mm'] });
    expect(huge.answer).toContain('leaves enough land');
    expect(() => pageOf(whatToDrill, { smallest: ['2 mm'], largest: ['1 mm'] })).toThrow(InputError);
    expect(() => pageOf(whatToDrill, { slow: ['300 mm/s'] })).toThrow('slow must be below middle, 300 mm/s');
    expect(() => pageOf(whatToDrill, { step: ['0.05 mm'], largest: ['4 mm'] })).toThrow(
      'together must be 12000 designs at most',
    );
  });
});
