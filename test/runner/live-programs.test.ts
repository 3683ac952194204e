import { describe, expect, test } from 'vitest';
import { fileEntry, livePrograms, pageEntry } from '../../lib/runner/build/live-programs.js';

const module = (name: string, exported: string, packages: readonly string[] = []) => ({
  text: `modules['./${name}.js']=${exported};\n`,
  packages,
});
const texts = {
  modules: {
    page: module(pageEntry, '{start:(notebook)=>out.push(notebook)}', ['b', 'a']),
    file: module(fileEntry, '{start:(all)=>out.push(all)}', ['c']),
    one: module('one', "{notebook:'first'}", ['a']),
    two: module('two', "{notebook:'second'}"),
  },
  needed: { [pageEntry]: ['page'], one: ['page', 'one'], two: ['page', 'two'] },
  licences: { a: 'free', b: 'free', c: 'freer' },
};
/** What a program starts with, when it is run. */
const started = (script: string): unknown => {
  const out: unknown[] = [];
  new Function('out', script)(out);
  return out;
};

describe('the programs of pages', () => {
  const { page, file } = livePrograms(texts);

  test('start the page with its own notebook', () => {
    expect(started(page('one').script)).toEqual(['first']);
    expect(started(page('two').script)).toEqual(['second']);
    expect(page('two').script).not.toContain('first');
  });

  test('begin alike, and name the licences of what is in them once', () => {
    const [one, two] = [page('one'), page('two')];
    expect(one.packed[0]).toBe(two.packed[0]);
    expect(one.packed[1]).not.toBe(two.packed[1]);
    expect(one.notices).toEqual([{ name: 'a, b', text: 'free' }]);
  });

  test('make one file of all notebooks only where that is asked for', () => {
    expect(file).toBeUndefined();
    const all = livePrograms({ ...texts, needed: { ...texts.needed, [fileEntry]: ['page', 'file'] } });
    expect(started(all.file?.script ?? '')).toEqual([['first', 'second']]);
    expect(all.file?.notices).toEqual([
      { name: 'a, b', text: 'free' },
      { name: 'c', text: 'freer' },
    ]);
  });
});
