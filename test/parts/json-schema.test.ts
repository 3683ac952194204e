import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { partsJsonSchema } from '../../lib/parts/index.js';
import { anyFile } from './any-file.js';
import { changed, smallFile } from './small-file.js';

// Ajv is a general validator of JSON Schema, draft 7 by default; strict mode refuses words it does not know. It would
// also want each "required" beside its "properties", which the list of ways to know a viscosity has no use for.
const strict = { strict: true, strictRequired: false };
const accepts = new Ajv(strict).compile(partsJsonSchema());

describe('the JSON Schema of a parts file', () => {
  it('is the one in docs/; renew it with "npx vitest run --config test/vitest.config.ts test/parts -u"', async () => {
    const text = `${JSON.stringify(partsJsonSchema(), null, 2)}\n`;
    await expect(text).toMatchFileSnapshot('../../docs/parts-file.schema.json');
  });

  it('accepts the demo file and the small file', () => {
    const demo = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');
    expect(accepts(parse(demo)), JSON.stringify(accepts.errors)).toBe(true);
    expect(accepts(parse(smallFile)), JSON.stringify(accepts.errors)).toBe(true);
  });

  it('accepts any file that readParts accepts', () => {
    fc.assert(
      fc.property(anyFile, (file) => {
        expect(accepts(JSON.parse(JSON.stringify(file))), JSON.stringify(accepts.errors)).toBe(true);
      }),
    );
  });

  it.each([
    ['unknown key', 'shaft:', 'rod:'],
    ['wrong dimension', '11.95 mm', '11.95 cSt'],
    ['bare number', '11.95 mm', '11.95'],
    ['fl oz', '60 ml', '2 fl oz'],
    ['half a hole', 'count: 2', 'count: 2.5'],
    ['another version', 'dashpot: 1', 'dashpot: 2'],
    ['two ways to know a viscosity', 'at: 25 °C\n', 'at: 25 °C\n    trade-weight: 35\n'],
    ['no way to know a viscosity', '    viscosity: 350 cSt\n    at: 25 °C\n', ''],
    ['empty name', 'name: mineral', 'name: ""'],
  ])('refuses %s', (_what, from, to) => {
    expect(accepts(parse(changed(from, to)))).toBe(false);
  });

  it('says of every field what it is', () => {
    const undescribed: string[] = [];
    const visit = (schema: unknown, path: string): void => {
      if (typeof schema !== 'object' || schema === null) return;
      const { properties, items, description } = schema as Record<string, unknown>;
      if (typeof description !== 'string' || description.length < 5) undescribed.push(path);
      for (const [key, value] of Object.entries(properties ?? {})) visit(value, `${path}.${key}`);
      if (items !== undefined) visit(items, `${path}[]`);
    };
    visit(partsJsonSchema(), 'file');
    expect(undescribed).toEqual([]);
  });

  it('gives examples that are themselves accepted', () => {
    const wrong: unknown[] = [];
    const ajv = new Ajv(strict);
    const visit = (schema: unknown): void => {
      if (typeof schema !== 'object' || schema === null) return;
      const { examples } = schema as { examples?: readonly unknown[] };
      for (const example of Array.isArray(examples) ? examples : []) {
        if (!ajv.validate(schema, example)) wrong.push(example);
      }
      Object.values(schema).forEach(visit);
    };
    visit(partsJsonSchema());
    expect(wrong).toEqual([]);
  });
});
