import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { type Parts, readParts } from '../../lib/parts/index.js';
import { changed, smallFile } from './small-file.js';

describe('a good file', () => {
  const parts = readParts(smallFile);

  it('is in SI, with its defaults filled in', () => {
    const friction = (kineticForce: number) => ({ kineticForce, breakawayForce: 1.5 * kineticForce });
    const expected: Parts = {
      about: 'a file for tests',
      assumptions: [],
      oils: [
        {
          name: 'clear 350',
          definition: {
            base: 'silicone',
            viscosity: { kind: 'silicone', point: { temperature: 298.15, kinematicViscosity: 350e-6 } },
          },
          bottle: { volume: 60e-6, price: { amount: 7.9, currency: 'EUR' } },
        },
        {
          name: 'mineral',
          definition: {
            base: 'petroleum',
            viscosity: {
              kind: 'viscosity-index',
              point: { temperature: 313.15, kinematicViscosity: 32e-6 },
              viscosityIndex: 95,
            },
          },
        },
      ],
      pistons: [
        {
          name: 'two 1.7',
          piston: {
            diameter: 11.95 / 1000,
            thickness: 0.0025,
            holes: [{ count: 2, diameter: 0.0017 }],
            eccentricity: 0,
          },
        },
      ],
      shocks: [
        {
          name: 'short 12',
          bore: 0.012,
          shaftDiameter: 0.003,
          stroke: 0.024,
          oilVolume: 3.2 / 1e6,
          seal: { low: friction(0.1), typical: friction(0.3), high: friction(1), measured: false },
          compensator: { kind: 'air-pocket', volume: 0.9 / 1e6 },
        },
      ],
      springs: [{ name: 'soft', rate: 400, freeLength: 0.045 }],
      builds: [],
    };
    expect({ ...parts, builds: [] }).toEqual(expected);
  });

  it('has builds made of its own parts', () => {
    const [build] = parts.builds;
    expect(build?.name).toBe('front');
    expect(build?.quantity).toBe(1);
    expect(build?.oil).toBe(parts.oils[0]);
    expect(build?.piston).toBe(parts.pistons[0]);
    expect(build?.shock).toBe(parts.shocks[0]);
    expect(build?.spring).toBe(parts.springs[0]);
  });

  it('may be JSON', () => {
    const json = '{"dashpot":1,"springs":[{"name":"soft","rate":"0.4 N/mm","free-length":"45 mm"}]}';
    expect(readParts(json).springs).toEqual(parts.springs);
  });

  it('may leave every list out', () => {
    const lists = { oils: [], pistons: [], shocks: [], springs: [], builds: [] };
    const empty: Parts = { about: '', assumptions: [], ...lists };
    expect(readParts('dashpot: 1')).toEqual(empty);
    expect(readParts('---\ndashpot: 1\n...\n')).toEqual(empty);
    expect(readParts('dashpot: 1\noils: []\n')).toEqual(empty);
  });

  it('may have 1000 entries in a list, and long comments', () => {
    const springs = Array.from(
      { length: 1000 },
      (_, index) => `  # ${index}\n\n  - { name: s${index}, rate: 1 N/mm, free-length: 45 mm }\n`,
    );
    const text = `${'# long\n'.repeat(2000)}dashpot: 1\nsprings:\n${springs.join('')}`;
    expect(readParts(text).springs).toHaveLength(1000);
  });
});

describe('every way to know a viscosity', () => {
  const silicone = '    viscosity: 350 cSt\n    at: 25 °C\n';
  const petroleum = '    viscosity: 32 cSt\n    at: 40 °C\n    viscosity-index: 95\n';
  const definition = (text: string, index: number): unknown =>
    readParts(text).oils[index]?.definition.viscosity;

  it.each([
    [
      0,
      changed(silicone, `${silicone}    viscosity-temperature-coefficient: 0.6\n`),
      {
        kind: 'viscosity-temperature-coefficient',
        point: { temperature: 298.15, kinematicViscosity: 350e-6 },
        coefficient: 0.6,
      },
    ],
    [
      0,
      changed(
        silicone,
        '    points:\n      - { at: 283.15 K, viscosity: 5 St }\n      - { at: 40 °C, viscosity: 280 mm²/s }\n',
      ),
      {
        kind: 'points',
        points: [
          { temperature: 283.15, kinematicViscosity: 500e-6 },
          { temperature: 313.15, kinematicViscosity: 280e-6 },
        ],
      },
    ],
    [0, changed(silicone, '    trade-weight: 35\n'), { kind: 'trade-weight', weight: 35 }],
    [1, changed(petroleum, '    iso-grade: 32\n'), { kind: 'iso-grade', grade: 32 }],
    [
      1,
      changed(petroleum, '    iso-grade: 32\n    viscosity-index: 110\n'),
      { kind: 'iso-grade', grade: 32, viscosityIndex: 110 },
    ],
  ])('oil %d', (index, text, expected) => {
    expect(definition(text, index)).toEqual(expected);
  });

  it('density is optional', () => {
    const parts = readParts(changed(silicone, `${silicone}    density: 0.97 g/cm³\n`));
    expect(parts.oils[0]?.definition.densityAt15Celsius).toBe(970);
  });
});

describe('friction', () => {
  it('of breakaway follows the moving friction where only that is known', () => {
    const seal = { kineticForce: 0.6, breakawayForce: 1.5 * 0.6 };
    const text = changed('volume: 0.9 ml }', 'volume: 0.9 ml }\n    seal: { moving-friction: 0.6 N }');
    expect(readParts(text).shocks[0]?.seal).toEqual({ low: seal, typical: seal, high: seal, measured: true });
  });

  it('may be none', () => {
    const text = changed('volume: 0.9 ml }', 'volume: 0.9 ml }\n    seal: { moving-friction: 0 N }');
    expect(readParts(text).shocks[0]?.seal.high).toEqual({ kineticForce: 0, breakawayForce: 0 });
  });

  it('of moving follows the breakaway friction where only that is known', () => {
    const text = changed('volume: 0.9 ml }', 'volume: 0.9 ml }\n    seal: { breakaway-friction: 0.3 N }');
    expect(readParts(text).shocks[0]?.seal.typical.kineticForce).toBeCloseTo(0.2, 12);
  });
});

describe('names', () => {
  it.each([
    '<script>alert(1)</script>',
    '"; rm -rf / #',
    '`$(exit)`',
    '{{ constructor }}',
    'constructor',
    'Öl für heiße Tage, 350 cSt',
    'ダンパー',
    '-1',
    'null',
  ])('%s is text and stays it', (name) => {
    const quoted = JSON.stringify(name);
    const text = changed('oil: clear 350', `oil: ${quoted}`).replace(
      'name: clear 350',
      () => `name: ${quoted}`,
    );
    expect(readParts(text).builds[0]?.oil.name).toBe(name);
  });

  it('of parts of different kinds may be the same', () => {
    const text = smallFile
      .replaceAll('two 1.7', 'same')
      .replaceAll('short 12', 'same')
      .replaceAll('clear 350', 'same');
    expect(readParts(text).builds[0]?.oil.name).toBe('same');
  });

  it('are found whichever way their accents are written', () => {
    const text = changed('name: clear 350', 'name: "cle\\u0301"').replace('oil: clear 350', 'oil: clé');
    expect(readParts(text).builds[0]?.oil.name).toBe('cle\u0301');
  });
});

describe('the demo file', () => {
  const text = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');
  const parts = readParts(text, 'demo-parts.yaml');

  it('says that it is invented, to readers of the text and of the page', () => {
    expect(text).toContain('INVENTED');
    expect(parts.about).toMatch(/^Invented/u);
  });

  it('has parts of every kind and builds of a whole car', () => {
    expect(parts.oils.map(({ definition }) => definition.viscosity.kind)).toEqual(
      expect.arrayContaining([
        'silicone',
        'points',
        'trade-weight',
        'viscosity-temperature-coefficient',
        'iso-grade',
      ]),
    );
    expect(parts.pistons.length).toBeGreaterThanOrEqual(4);
    expect(parts.shocks.length).toBeGreaterThanOrEqual(2);
    expect(parts.springs.length).toBeGreaterThanOrEqual(2);
    expect(parts.builds.length).toBeGreaterThanOrEqual(4);
  });
});
