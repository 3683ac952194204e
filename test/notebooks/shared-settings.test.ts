import { describe, expect, it } from 'vitest';
import { type Notebook, optionName, type Parameter, quantity } from '../../lib/page/index.js';
import { listNotebooks } from '../../lib/runner/build/notebook-list.js';
import { realNotebooks } from '../live/notebook-folders.js';

/** What a parameter is, whatever its range, its default and its words on one page. */
function meaningOf(parameter: Parameter): string {
  const { kind, label, meaning = label } = parameter;
  switch (parameter.kind) {
    case 'quantity':
      return `${meaning}: ${kind}, ${parameter.dimension}`;
    case 'choice':
      return `${meaning}: ${kind}, ${parameter.options.join()}`;
    case 'part':
    case 'parts':
      return `${meaning}: ${kind}, ${parameter.list}`;
    case 'integer':
      return `${meaning}: ${kind}`;
  }
}

/** The options that mean one thing on a page and another on the next, with what they mean. */
function ambiguous(notebooks: readonly Pick<Notebook, 'name' | 'parameters'>[]): readonly string[] {
  const meanings = new Map<string, Map<string, string[]>>();
  for (const { name, parameters } of notebooks)
    for (const [key, parameter] of Object.entries(parameters)) {
      const option = optionName(key);
      const found = meanings.get(option) ?? new Map<string, string[]>();
      const meaning = meaningOf(parameter);
      meanings.set(option, found.set(meaning, [...(found.get(meaning) ?? []), name]));
    }
  return [...meanings]
    .filter(([, found]) => found.size > 1)
    .map(([option, found]) => {
      const each = [...found].map(([meaning, names]) => `"${meaning}" on ${names.join(', ')}`);
      return `${option} is ${each.join(' and ')}`;
    });
}

describe('a setting that several pages have', () => {
  it('means the same on all of them: a reader chooses it once', async () => {
    expect(ambiguous(await listNotebooks(realNotebooks))).toEqual([]);
  });

  it('is told where it does not', () => {
    const words = { label: 'Warmer', help: 'Help.', default: 1, min: 0, max: 9, step: 1 } as const;
    const temperature = quantity({ ...words, dimension: 'temperature', unit: '°C' });
    const difference = quantity({ ...words, dimension: 'temperatureDifference', unit: 'K' });
    const length = quantity({ ...words, dimension: 'length', unit: 'mm' });
    const pages = [
      { name: 'a', parameters: { warmer: temperature, gap: length } },
      { name: 'b', parameters: { warmer: difference, gap: { ...length, label: 'Wide', meaning: 'Warmer' } } },
      { name: 'c', parameters: { gap: { ...length, max: 99, help: 'Other words.' } } },
    ];
    expect(ambiguous(pages)).toEqual([
      'warmer is "Warmer: quantity, temperature" on a and "Warmer: quantity, temperatureDifference" on b',
    ]);
    const renamed = { name: 'd', parameters: { gap: { ...length, label: 'Clearance' } } };
    expect(ambiguous([...pages.slice(2), renamed])).toEqual([
      'gap is "Warmer: quantity, length" on c and "Clearance: quantity, length" on d',
    ]);
  });
});
