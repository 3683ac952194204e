import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';

const lib = fileURLToPath(new URL('../../lib', import.meta.url));

/** Which layers a layer may import, besides itself. Anything else is a fault of the layout. */
const physics = ['base', 'numeric', 'fluid', 'flow', 'gas', 'damper', 'fill'];
const mayImport: Readonly<Record<string, readonly string[]>> = {
  base: [],
  numeric: ['base'],
  units: ['base'],
  fluid: ['base', 'numeric'],
  flow: ['base', 'numeric', 'fluid'],
  gas: ['base', 'numeric', 'fluid'],
  damper: ['base', 'numeric', 'fluid', 'flow', 'gas'],
  fill: ['base', 'numeric', 'fluid', 'flow', 'gas', 'damper'],
  piston: ['base', 'numeric', 'fluid', 'flow', 'gas', 'damper'],
  motion: physics,
  measure: [...physics, 'motion'],
  decisions: [...physics, 'motion', 'measure'],
  parts: [...physics, 'units', 'motion', 'measure', 'decisions'],
  plot: ['base', 'units'],
  page: ['base', 'units', 'parts', 'plot'],
  live: ['base', 'numeric', 'units', 'parts', 'plot', 'page'],
  runner: ['base', 'numeric', 'units', 'parts', 'plot', 'page', 'live'],
  workers: [...physics, 'decisions'],
  'index.ts': physics,
};

/** Packages that code of a layer may import; a browser must be able to run all but the runner. */
const mayUse: Readonly<Record<string, readonly string[]>> = {
  numeric: ['pure-rand/generator/xoroshiro128plus'],
  parts: ['yaml', 'zod', 'zod/mini', 'fastest-levenshtein', 'd3-dsv'],
  plot: ['vega', 'vega-lite', 'vega-interpreter', 'simplify-js', 'dequal/lite'],
  live: [
    'vega',
    'vega-view',
    'vega-dataflow',
    'vega-encode',
    'vega-transforms',
    'vega-view-transforms',
    'vega-interpreter',
    'yaml',
  ],
};

const anyPackage = ['runner', 'decisions', 'workers'];

interface Import {
  readonly file: string;
  readonly layer: string;
  readonly target: string;
}

function layerOf(path: string): string {
  return relative(lib, path).split('/')[0] ?? '';
}

const imports: readonly Import[] = readdirSync(lib, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .flatMap((name) => {
    const source = readFileSync(join(lib, name), 'utf8');
    const specifiers = source.matchAll(/^(?:import|export)\b[^;]*?from '([^']+)';|import\('([^']+)'\)/gmu);
    return [...specifiers].map((match) => ({
      file: name,
      layer: layerOf(join(lib, name)),
      target: match[1] ?? match[2] ?? '',
    }));
  });

describe('layers of lib/', () => {
  test('the reader of imports finds them', () => expect(imports.length).toBeGreaterThan(50));

  test('imports run one way down the layers', () => {
    const upward = imports
      .filter(({ target }) => target.startsWith('.'))
      .filter(({ file, layer, target }) => {
        const other = layerOf(join(dirname(join(lib, file)), target));
        return other !== layer && !(mayImport[layer] ?? []).includes(other);
      });
    expect(upward).toEqual([]);
  });

  test('packages are imported only where a layer may use them', () => {
    const stray = imports
      .filter(({ target, layer }) => !target.startsWith('.') && !anyPackage.includes(layer))
      .filter(({ target, layer }) => !(mayUse[layer] ?? []).includes(target));
    expect(stray).toEqual([]);
  });
});
