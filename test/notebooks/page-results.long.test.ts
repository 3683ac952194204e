import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import schema from '../../docs/page-results.schema.json' with { type: 'json' };
import { contentHash, pageJson, unansweredPage } from '../../lib/page/index.js';
import { runNotebook } from '../../lib/page/run-notebook.js';
import { listNotebooks } from '../../lib/runner/build/notebook-list.js';
import manifest from '../../package.json' with { type: 'json' };
import { realNotebooks } from '../live/notebook-folders.js';
import { contentOf } from '../page/sample-page.js';
import { files, fileTexts } from './answers.js';

// Ajv is a general validator of JSON Schema; strict mode refuses words it does not know.
const follows = new Ajv({ strict: true, strictTypes: false, allErrors: true }).compile(schema);
const notebooks = await listNotebooks(realNotebooks);

interface Results {
  readonly format: string;
  readonly version: string;
  readonly blocks: readonly { readonly kind: string; readonly blocks?: readonly object[] }[];
}

const written = new Map<string, Promise<Results>>();

/** What the command would write beside the page, once. */
function resultsOf(notebook: (typeof notebooks)[number], file: keyof typeof files): Promise<Results> {
  const key = `${notebook.name} ${file}`;
  const results = written.get(key) ?? writeResults(notebook, file);
  written.set(key, results);
  return results;
}

async function writeResults(
  notebook: (typeof notebooks)[number],
  file: keyof typeof files,
): Promise<Results> {
  const run = () => {
    try {
      return runNotebook(notebook, files[file], {});
    } catch (error) {
      return { page: unansweredPage(error as Error, files[file]), parameters: [] };
    }
  };
  const { page, parameters } = run();
  const provenance = {
    version: manifest.version,
    contentHash: await contentHash(fileTexts[file], parameters),
    notices: [],
  };
  const { title, question } = notebook;
  const { about } = files[file];
  return JSON.parse(pageJson({ ...contentOf(page), title, question, about, parameters, provenance }));
}

describe('the JSON beside a page follows its published schema', () => {
  describe.each(['demo', 'twoCars', 'smallest'] as const)('with the %s parts', (file) => {
    test.each(notebooks)('$name', async (notebook) => {
      const results = await resultsOf(notebook, file);
      expect(follows(results), JSON.stringify(follows.errors?.slice(0, 3))).toBe(true);
    });
  });

  test('and each kind of block of the schema is on some page', async () => {
    const seen = new Set<string>();
    for (const notebook of notebooks)
      for (const file of ['demo', 'smallest'] as const)
        for (const { kind } of (await resultsOf(notebook, file)).blocks) seen.add(kind);
    const kinds = schema.properties.blocks.items.oneOf.map(({ $ref }) => $ref.split('/').at(-1));
    expect([...seen].map((kind) => (kind === 'table' ? 'tableBlock' : kind)).sort()).toEqual(kinds.sort());
  });

  test('which refuses what no program should have to read', async () => {
    const [notebook] = notebooks;
    if (notebook === undefined) throw new Error('there are notebooks');
    const good = await resultsOf(notebook, 'demo');
    const [block] = good.blocks;
    for (const bad of [
      { ...good, format: '2.0.0' },
      { ...good, format: 1 },
      { ...good, version: 'one' },
      { ...good, more: true },
      { ...good, answer: undefined },
      { ...good, blocks: [{ ...block, kind: 'picture' }] },
      { ...good, blocks: [{ kind: 'text', text: 3 }] },
      { ...good, blocks: [{ kind: 'check', claim: 'a', detail: 'b', passed: 'yes' }] },
    ])
      expect(follows(JSON.parse(JSON.stringify(bad)))).toBe(false);
    expect(good.version).toBe(manifest.version);
  });

  test('whose version is that of its first page in words, too', () => {
    const text = readFileSync(new URL('../../docs/page-results.schema.json', import.meta.url), 'utf8');
    const { format } = JSON.parse(pageJson(contentOf({ answer: 'a', blocks: [], sources: [] })));
    expect(text).toContain(`format ${format}:`);
  });
});
