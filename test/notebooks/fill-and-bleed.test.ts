import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pageFigures, pagePassed, readParameterValues } from '../../lib/page/index.js';
import { readParts } from '../../lib/parts/index.js';
import { notebook } from '../../notebooks/fill-and-bleed.js';

const demo = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');
const parts = readParts(demo);

const pageOf = (texts: Readonly<Record<string, string>>, from = parts) =>
  notebook.run(from, readParameterValues(notebook.parameters, texts, from));

describe.each(parts.builds.map(({ name }) => name))('%s', (name) => {
  const page = pageOf({ build: name });

  it('passes its own checks', () => expect(pagePassed(page)).toBe(true));

  it('shows its figures', () => {
    expect(pageFigures(page).map(({ id }) => id)).toEqual([
      'push-by-closing',
      'push-by-compensator',
      'push-by-temperature',
      'bubble-left',
      'travel-after-bleeds',
      'soft-oil',
      'dead-band',
      'friction-or-damping',
    ]);
  });

  it('says no number that is none', () => {
    expect(JSON.stringify([page.answer, pageFigures(page).map(({ alt }) => alt)])).not.toMatch(
      /NaN|Infinity|undefined/u,
    );
  });
});

describe('the page', () => {
  it('says that a shock creeps where its gas beats its seals', () => {
    const smooth = readParts(
      demo.replace('pushing-in: 0.18 N, letting-out: -0.14 N', 'pushing-in: 0.05 N, letting-out: 0.01 N'),
    );
    expect(pageOf({ build: 'buggy rear' }).answer).toContain('stays wherever it is put');
    expect(pageOf({ build: 'buggy rear' }, smooth).answer).toContain('does not stay where it is put');
  });

  it('still draws a shock that locks on hot oil', () => {
    const tight = readParts(demo.replace('kind: bladder, volume: 1.0 ml', 'kind: bladder, volume: 0.2 ml'));
    const page = pageOf({ build: 'buggy rear', hottest: '60 °C' }, tight);
    expect(JSON.stringify(pageFigures(page).map(({ alt }) => alt))).toContain('a lock at 60 °C');
  });

  it('leaves out a dead travel that would tear the oil', () => {
    const page = pageOf({ build: 'buggy rear', speed: '500 mm/s' });
    expect(JSON.stringify(pageFigures(page).map(({ alt }) => alt))).toContain('torn oil pushed in');
  });

  it.each(['shaft-side', 'emulsion'])('answers for gas that is %s', (layout) => {
    const laidOut = readParts(
      demo.replace('gas: { volume: 1.1 ml,', `gas: { layout: ${layout}, volume: 1.1 ml,`),
    );
    const page = pageOf({ build: 'buggy rear' }, laidOut);
    expect(pagePassed(page)).toBe(true);
    expect(pageFigures(page).some(({ id }) => id === 'dead-band')).toBe(layout === 'shaft-side');
  });

  it('refuses what it cannot answer', () => {
    expect(() => pageOf({ bench: '50 °C' })).toThrow(/bench/u);
    const locked = readParts(
      demo.replace(
        'compensator: { kind: bladder, volume: 1.0 ml, stiffness: 15 kPa/ml }',
        'compensator: { kind: none }',
      ),
    );
    expect(() => pageOf({ build: 'buggy rear' }, locked)).toThrow(/makes room/u);
  });
});
