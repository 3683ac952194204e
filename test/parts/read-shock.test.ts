import { describe, expect, test } from 'vitest';
import { createOil, damperForce, damperModel, fluidAt } from '../../lib/index.js';
import { assembleShock, readParts, readShock } from '../../lib/parts/index.js';
import { smallFile } from './small-file.js';

const twoBuilds = `${smallFile}  - name: rear
    shock: short 12
    piston: two 1.7
    oil: mineral
`;

describe('a shock of a parts file in one call', () => {
  test('is the only build of the file, assembled', () => {
    const [build] = readParts(smallFile).builds;
    if (build === undefined) throw new Error('the small file has a build');
    const shock = readShock(smallFile);
    expect(shock.damper).toEqual(assembleShock(build).damper);
    expect(shock.oil).toEqual(createOil(build.oil.definition));
    expect(shock.build.name).toBe('front');
  });

  test('is the one named', () => {
    expect(readShock(twoBuilds, 'rear').oil.base).toBe('petroleum');
    expect(readShock(twoBuilds, 'front').oil.base).toBe('silicone');
  });

  test.each([
    [undefined, 'name must be one of "front", "rear", got undefined'],
    ['middle', 'name must be one of "front", "rear", got middle'],
  ])('without a build of that name is refused: %s', (name, message) => {
    expect(() => readShock(twoBuilds, name)).toThrow(message);
  });

  test('of a file without builds is refused', () => {
    expect(() => readShock('dashpot: 1\n')).toThrow('name must be of a file that has builds');
  });

  test('survives structuredClone whole, and the clone gives the same force', () => {
    const shock = readShock(smallFile);
    const clone = structuredClone(shock);
    expect(clone).toEqual(shock);
    const force = ({ damper, oil }: typeof shock) =>
      damperForce(damperModel(damper, fluidAt(oil, 293.15)), { speed: -0.3, position: 0.01 }).force;
    expect(force(clone)).toBe(force(shock));
  });
});
