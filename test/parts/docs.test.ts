import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { partsJsonSchema, readParts } from '../../lib/parts/index.js';
import { unitTable } from '../../lib/units/unit-table.js';

const page = readFileSync(new URL('../../docs/parts-file.md', import.meta.url), 'utf8');

interface Field {
  readonly key: string;
  readonly description: string;
  readonly minimum?: number;
  readonly maximum?: number;
}

function fieldsOf(schema: unknown): readonly Field[] {
  if (typeof schema !== 'object' || schema === null) return [];
  const { properties = {}, items } = schema as {
    properties?: Readonly<Record<string, Field>>;
    items?: unknown;
  };
  const own = Object.entries(properties).flatMap(([key, field]) => [{ ...field, key }, ...fieldsOf(field)]);
  return [...own, ...fieldsOf(items)];
}

const fields = fieldsOf(partsJsonSchema());
const rows = page.split('\n');

describe('docs/parts-file.md', () => {
  it('shows a file that can be read', () => {
    const [file] = [...page.matchAll(/```yaml\n(dashpot: 1\n[\s\S]*?)```/gu)].map((match) => match[1]);
    expect(readParts(file ?? '').builds).toHaveLength(1);
  });

  it('names every key of the format', () => {
    expect(fields.length).toBeGreaterThan(40);
    expect(fields.filter(({ key }) => !page.includes(`\`${key}\``)).map(({ key }) => key)).toEqual([]);
  });

  it('gives every range of the format, beside its key', () => {
    const ranges = fields.flatMap(({ key, description, minimum, maximum }) => {
      const quantity = /\((?<range>[^()]* to [^()]*)\)\.$/u.exec(description)?.groups?.['range'];
      return quantity === undefined
        ? minimum === undefined
          ? []
          : [{ key, range: `${minimum} to ${maximum}` }]
        : [{ key, range: quantity }];
    });
    expect(ranges.length).toBeGreaterThan(25);
    const missing = ranges.filter(
      ({ key, range }) => !rows.some((row) => row.includes(`\`${key}\``) && row.includes(range)),
    );
    expect(missing).toEqual([]);
  });

  it('names every unit that a parts file may use', () => {
    const dimensions = [
      'length',
      'volume',
      'kinematicViscosity',
      'temperature',
      'temperatureDifference',
      'density',
      'pressure',
      'force',
      'springRate',
      'volumeStiffness',
    ] as const;
    const symbols = dimensions.flatMap((dimension) => unitTable[dimension].map(({ symbol }) => symbol));
    // "mL" and "L" are read as well; one spelling is enough for a page.
    const missing = symbols.filter(
      (symbol) => !page.includes(`\`${symbol}\``) && symbol !== 'mL' && symbol !== 'L',
    );
    expect(missing).toEqual([]);
  });
});
