import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pageFigures, pagePassed } from '../../lib/page/blocks/checked-page.js';
import type { Page } from '../../lib/page/blocks/page.js';
import type { Notebook } from '../../lib/page/notebook.js';
import { readParameterValues } from '../../lib/page/parameters/read-parameters.js';
import { readParts } from '../../lib/parts/read-parts.js';
import { notebook as buildSheet } from '../../notebooks/build-sheet.js';
import { notebook as comparePistons } from '../../notebooks/compare-pistons.js';
import { notebook as dayPlan } from '../../notebooks/day-plan.js';
import { notebook as holeSize } from '../../notebooks/hole-size.js';
import { notebook as lesson } from '../../notebooks/lesson.js';
import { notebook as match } from '../../notebooks/match.js';
import { notebook as whatToDrill } from '../../notebooks/what-to-drill.js';

const parts = readParts(readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8'));

function pageOf<Any extends Notebook>(notebook: Any, texts: Readonly<Record<string, string>>): Page {
  return notebook.run(parts, readParameterValues(notebook.parameters, texts, parts));
}

describe('settings that do not go together are refused in words of the bench', () => {
  it.each([lesson, holeSize, match] as unknown as readonly Notebook[])(
    '$name: a piston and a bore',
    (notebook) => {
      const small = { piston: 'two 1.7', shock: 'big 16' };
      expect(() => pageOf(notebook, small)).toThrow(
        'piston must be one that runs in the bore of big 16, 16 mm, got two 1.7, 11.94 mm across',
      );
      const large = { piston: 'eight 1.4', shock: 'short 12' };
      expect(() => pageOf(notebook, large)).toThrow('got eight 1.4, 15.95 mm across');
    },
  );

  it('a slow speed above the fast one', () => {
    expect(() => pageOf(match, { slow: '600 mm/s' })).toThrow('slow must be below middle, 300 mm/s');
    expect(() => pageOf(dayPlan, { slow: '600 mm/s' })).toThrow('slow must be below middle, 300 mm/s');
  });

  it('temperatures and weights of the build sheet', () => {
    expect(() => pageOf(buildSheet, { coldest: '80 °C' })).toThrow('below the hottest, 38 °C, got 80 °C');
    expect(() => pageOf(buildSheet, { weight: '10 g' })).toThrow('below the weight of 10 g, got 50 g');
  });
});

describe('an answer stays true where nothing comes near', () => {
  it('what to drill', () => {
    const page = pageOf(whatToDrill, { 'slow-compression': '300 N' });
    expect(page.answer).toContain('For the forces you want nothing that was tried comes near');
    expect(pageFigures(page)[0]?.alt).toContain('None of them is robust');
  });

  it('day plan', () => {
    const { answer } = pageOf(dayPlan, { builds: 'buggy rear, petroleum' });
    expect(answer).toContain('Nothing on the shelf comes nearer than');
    expect(answer).not.toContain('not worth a rebuild');
  });

  it('match', () => {
    const page = pageOf(match, {
      build: 'buggy rear, petroleum',
      piston: 'two 1.7',
      shock: 'short 12',
      fast: '3000 mm/s',
    });
    expect(page.answer).toMatch(/comes back only to within \d\d %, on a/u);
    expect(pagePassed(page)).toBe(true);
  });
});

describe('one of a kind', () => {
  it('is no plural', () => {
    expect(JSON.stringify(pageOf(lesson, { count: '1' }))).not.toContain('1 holes');
    expect(JSON.stringify(pageOf(lesson, { more: '1' }))).not.toContain('1 holes');
    expect(JSON.stringify(pageOf(whatToDrill, { 'most-holes': '1' }))).not.toContain('1 holes');
  });

  it('one piston is not both the one that packs most and the one that packs least', () => {
    expect(pageOf(comparePistons, { shock: 'big 16' }).answer).not.toContain('least');
  });
});
