import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { assembleShock, readParts } from '../../lib/parts/index.js';

describe('files of new users', () => {
  const file = (name: string) =>
    readParts(readFileSync(new URL(`files/${name}`, import.meta.url), 'utf8'), name);

  it('the smallest gives a build, and says how it was made', () => {
    const parts = file('smallest.yaml');
    expect(parts.assumptions).toEqual([
      'The parts file has no builds: one is made of the pistons that fit, each with the first oil, label 25.',
    ]);
    expect(parts.builds.map(({ name, quantity }) => [name, quantity])).toEqual([['front, three holes', 1]]);
    expect(parts.oils[1]?.assumptions).toEqual([
      'The 450 cSt of bottle 450 are taken at 25 °C, as data sheets of silicone oil state them: the parts file gives no temperature.',
    ]);
    const [build] = parts.builds;
    if (build === undefined) throw new Error('no build');
    const { damper, known, seal } = assembleShock(build);
    expect(known).toEqual({ gas: false, inside: false, oilVolume: false, closing: false, seal: false });
    expect(damper.seal).toEqual(seal.typical);
    const oil = parts.oils[1];
    if (oil === undefined) throw new Error('no oil');
    expect(assembleShock({ ...build, oil }).assumptions[0]).toMatch(/^The 450 cSt/u);
  });

  it('that of two cars keeps its builds and pistons of two bores', () => {
    const parts = file('two-cars.yaml');
    expect(parts.assumptions).toEqual([]);
    expect(parts.builds.map(({ name }) => name)).toEqual(['buggy front', 'buggy rear', 'truck']);
    expect(parts.pistons).toHaveLength(6);
    expect(parts.timed?.map(({ build }) => build.name)).toEqual([
      'buggy front',
      'buggy front',
      'buggy rear',
      'buggy rear',
      'truck',
    ]);
    for (const build of parts.builds) expect(assembleShock(build).known.seal).toBe(false);
  });

  it('without builds and with pistons of another bore says so', () => {
    const text = readFileSync(new URL('files/smallest.yaml', import.meta.url), 'utf8').replace(
      '11.92',
      '9.92',
    );
    expect(readParts(text)).toMatchObject({
      builds: [],
      assumptions: ['The parts file has no builds, and none of its pistons fits one of its shocks.'],
    });
  });
});
