import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
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
  motion: physics,
  measure: [...physics, 'units', 'motion'],
  decisions: [...physics, 'motion', 'measure'],
  parts: [...physics, 'units', 'motion', 'measure', 'decisions'],
  plot: ['base', 'units'],
  page: ['base', 'units', 'parts', 'plot'],
  live: ['base', 'numeric', 'units', 'parts', 'plot', 'page'],
  runner: ['base', 'numeric', 'fluid', 'units', 'parts', 'plot', 'page', 'live'],
  order: [...physics, 'decisions'],
  workers: [...physics, 'decisions'],
  'index.ts': physics,
};

/** Packages that code of a layer may import; a browser must be able to run all but the runner. */
const mayUse: Readonly<Record<string, readonly string[]>> = {
  numeric: ['vega-statistics', 'pure-rand/generator/xoroshiro128plus', 'ml-matrix', 'jstat'],
  measure: ['ml-matrix', 'd3-dsv'],
  parts: ['yaml', 'zod', 'zod/mini', 'fastest-levenshtein', 'd3-dsv'],
  plot: ['vega', 'vega-lite', 'vega-interpreter', 'd3-array', 'simplify-js', 'dequal/lite'],
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

/**
 * Rooms of a layer, the lowest first: a room may import those before it, and not the files that stand beside the rooms. A new
 * room gets its place here.
 */
const rooms: Readonly<Record<string, readonly string[]>> = {
  numeric: ['integrator', 'least-squares', 'sampling'],
  fluid: ['viscosity', 'shear', 'air', 'oil', 'blend'],
  flow: ['geometry', 'hole', 'gap', 'disc', 'valve', 'piston'],
  fill: ['length', 'air', 'chamber', 'friction'],
  motion: ['input', 'shock', 'bench', 'corner', 'heat'],
  measure: ['statistics', 'model', 'reading', 'oil', 'dyno', 'fit', 'answer'],
  decisions: ['search', 'spread', 'match', 'design', 'day', 'order', 'pair'],
  parts: ['source', 'assembly', 'schema', 'table'],
  plot: ['chart', 'drawing', 'vega', 'figure'],
  page: ['style', 'blocks', 'parameters', 'html'],
  live: ['document', 'case', 'controls', 'pictures', 'parts', 'first', 'index'],
  runner: ['command', 'build', 'watch', 'packed'],
};

/** Rooms that may import the files beside them: single functions in `numeric`; types of the parts file, which should get a room, in `parts`; the command itself in `runner`. */
const besideBelow = [
  'numeric/integrator',
  'numeric/sampling',
  'parts/assembly',
  'parts/schema',
  'runner/packed',
];

interface Import {
  readonly file: string;
  readonly layer: string;
  readonly target: string;
}

/** First folder of a path within `lib/`. */
function layerOf(path: string): string {
  return path.split('/')[0] ?? '';
}

/** Folder of a file within its layer; empty where it stands beside the rooms. */
function roomOf(path: string): string {
  return path.split('/').slice(1, -1).join('/');
}

const imports: readonly Import[] = readdirSync(lib, { recursive: true, encoding: 'utf8' })
  .filter((name) => name.endsWith('.ts'))
  .flatMap((name) => {
    const source = readFileSync(join(lib, name), 'utf8');
    const specifiers = source.matchAll(/^(?:import|export)\b[^;]*?from '([^']+)';|import\('([^']+)'\)/gmu);
    return [...specifiers].map((match) => ({
      file: name,
      layer: layerOf(name),
      target: match[1] ?? match[2] ?? '',
    }));
  });

/** Which file imports which, both as paths within `lib/`. */
type Edge = readonly [file: string, target: string];

const edges: readonly Edge[] = imports
  .filter(({ target }) => target.startsWith('.'))
  .map(({ file, target }) => [file, join(dirname(file), target).replace(/js$/u, 'ts')]);

/** The imports that lead back, over any number of others, to the file that has them. */
function circles(all: readonly Edge[]): readonly Edge[] {
  const targets = new Map<string, string[]>();
  for (const [file, target] of all) targets.set(file, [...(targets.get(file) ?? []), target]);
  const reached = (from: string): ReadonlySet<string> => {
    const seen = new Set<string>();
    const open = [from];
    for (let file = open.pop(); file !== undefined; file = open.pop()) {
      if (seen.has(file)) continue;
      seen.add(file);
      open.push(...(targets.get(file) ?? []));
    }
    return seen;
  };
  const from = new Map([...new Set(all.map(([, target]) => target))].map((file) => [file, reached(file)]));
  return all.filter(([file, target]) => from.get(target)?.has(file) === true);
}

test('a circle is found, and a chain is none', () => {
  const chain: readonly Edge[] = [
    ['a', 'b'],
    ['b', 'c'],
    ['a', 'c'],
    ['c', 'd'],
  ];
  expect(circles(chain)).toEqual([]);
  expect(circles([...chain, ['c', 'b']])).toEqual([
    ['b', 'c'],
    ['c', 'b'],
  ]);
});

describe('layers of lib/', () => {
  test('the reader of imports finds them', () => expect(imports.length).toBeGreaterThan(50));

  test('imports run one way down the layers', () => {
    const upward = imports
      .filter(({ target }) => target.startsWith('.'))
      .filter(({ file, layer, target }) => {
        const other = layerOf(join(dirname(file), target));
        return other !== layer && !(mayImport[layer] ?? []).includes(other);
      });
    expect(upward).toEqual([]);
  });

  test('each room of a layer has its place in the order', () => {
    const found = new Map<string, Set<string>>();
    for (const { file, layer } of imports) {
      if (roomOf(file) !== '') found.set(layer, (found.get(layer) ?? new Set()).add(roomOf(file)));
    }
    for (const [layer, names] of found) expect([...(rooms[layer] ?? [])].sort()).toEqual([...names].sort());
  });

  test('the table of the layout in DEVELOPERS.md names the same layers and rooms', () => {
    const text = readFileSync(new URL('../../DEVELOPERS.md', import.meta.url), 'utf8');
    const names = (cell: string) => [...cell.matchAll(/`([^`]+)`/gu)].map((match) => match[1]);
    const rows = text
      .slice(text.indexOf('rooms, the lowest first'), text.indexOf('All but `runner`'))
      .split('\n')
      .filter((line) => line.startsWith('| `'))
      .map((line) => line.split('|').slice(1))
      .map(([layer = '', , inside = '']) => [names(layer)[0] ?? '', names(inside)] as const);
    const table = Object.fromEntries(rows);
    const layers = Object.keys(mayImport).filter((name) => name !== 'index.ts');
    expect(table).toEqual(Object.fromEntries(layers.map((layer) => [layer, rooms[layer] ?? []])));
  });

  test('imports run one way through the rooms of a layer', () => {
    const wrong = edges.filter(([file, target]) => {
      if (layerOf(file) !== layerOf(target) || roomOf(file) === '') return false;
      if (roomOf(target) === '') return !besideBelow.includes(`${layerOf(file)}/${roomOf(file)}`);
      const order = rooms[layerOf(file)] ?? [];
      return order.indexOf(roomOf(target)) > order.indexOf(roomOf(file));
    });
    expect(wrong).toEqual([]);
  });

  test('no files import each other in a circle, not even for types', () => {
    expect(circles(edges)).toEqual([]);
  });

  test('packages are imported only where a layer may use them', () => {
    const stray = imports
      .filter(({ target, layer }) => !target.startsWith('.') && !anyPackage.includes(layer))
      .filter(({ target, layer }) => !(mayUse[layer] ?? []).includes(target));
    expect(stray).toEqual([]);
  });
});
