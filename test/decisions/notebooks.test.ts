import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { describe, expect, it } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import type { Notebook } from '../../lib/page/notebook.js';
import { type Page, pageFigures, pagePassed } from '../../lib/page/page.js';
import { readParameterValues } from '../../lib/page/read-parameters.js';
import { readParts } from '../../lib/parts/read-parts.js';
import { notebook as dayPlan } from '../../notebooks/day-plan.js';
import { notebook as match } from '../../notebooks/match.js';
import { notebook as orderPlan } from '../../notebooks/order-plan.js';
import { notebook as pair } from '../../notebooks/pair.js';
import { notebook as spread } from '../../notebooks/spread.js';

const demo = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');
const parts = readParts(demo);

function pageOf<Any extends Notebook>(
  notebook: Any,
  texts: Readonly<Record<string, readonly string[]>> = {},
): Page {
  return notebook.run(parts, readParameterValues(notebook.parameters, texts, parts));
}

const all = { 'day-plan': dayPlan, match, 'order-plan': orderPlan, pair, spread } as unknown as Readonly<
  Record<string, Notebook>
>;

describe('decision notebooks on the demo parts', () => {
  for (const [name, notebook] of Object.entries(all)) {
    it(`${name}: one figure right after the answer, all checks passed, the same page twice`, {
      timeout: 60_000,
    }, () => {
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

    it(`${name}: runs where there is no Node`, { timeout: 60_000 }, async () => {
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
      // What a page pays for the physics and the plan, beside the drawing.
      expect(outputFiles[0]?.contents.length).toBeLessThan(110_000);
    });
  }

  it('a tolerance that no shelf meets is said, not hidden', () => {
    const page = pageOf(orderPlan, { tolerance: ['2 %'], parts: ['1'] });
    expect(page.answer).toContain('No bottle of the shop list');
  });

  it('a cold day all day needs one fill', () => {
    const even = readParts(demo.replace(/^day:[\s\S]*?\n\n/mu, ''));
    const values = readParameterValues(dayPlan.parameters, { coldest: ['20 °C'], hottest: ['20 °C'] }, even);
    expect(dayPlan.run(even, values).answer).toContain('Start on shop 350 and leave it');
  });

  it('without timed shocks the pair page says what is missing', () => {
    const none = readParts(demo.replace(/^timed:[\s\S]*?\n\n/mu, ''));
    expect(() => pair.run(none, readParameterValues(pair.parameters, {}, none))).toThrow(InputError);
  });

  it('a wider piston is answered with what no oil mends', () => {
    const page = pageOf(match, { piston: ['four 1.3 thick'] });
    expect(JSON.stringify(page.blocks)).toContain('What no oil mends');
  });
});
