import { describe, expect, it } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import { dotChart, lineChart } from '../../lib/plot/index.js';
import { dots, lines } from './sample-figures.js';

describe('the words of a figure', () => {
  it('need an alternative text, to the compiler and at run time', () => {
    const { alt, ...without } = lines;
    expect(alt).not.toBe('');
    // @ts-expect-error: a figure without alternative text does not compile.
    expect(() => lineChart(without)).toThrow();
    expect(() => lineChart({ ...lines, alt: ' ' })).toThrow(InputError);
    expect(() => dotChart({ ...dots, alt: '' })).toThrow(/alt of figure three-temperatures/u);
  });

  it('need an id that is a file name', () => {
    for (const id of ['', '../up', 'Capital', 'two--hyphens', 'a b', 'é'])
      expect(() => lineChart({ ...lines, id })).toThrow(InputError);
  });

  it('need a title', () => {
    expect(() => dotChart({ ...dots, title: '' })).toThrow(/title/u);
  });
});
