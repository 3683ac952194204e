import { describe, expect, it } from 'vitest';
import { PartsFileError, readParts } from '../../lib/parts/index.js';
import { smallFile } from './small-file.js';

const plans = `shop:
  - { name: shop 200, base: silicone, viscosity: 200 cSt, at: 25 °C, bottle: { volume: 60 ml, price: 7 EUR } }
day:
  - { time: "8:30", temperature: 10 °C }
  - { time: "14:00", temperature: 30 °C }
timed:
  - { name: front left, times: [4.1 s, 4.2 s] }
tolerances: { hole-diameter: 0.02 mm, gap: 10 µm, viscosity: 5 %, temperature: 3 K, gas-volume: 0.1 ml }
`;
const build = '    corner: { mass: 420 g, motion-ratio: 0.65 }\n    wanted: { oil: mineral, at: 20 °C }\n';
const whole = `${smallFile}${build}${plans}`;

function refusal(from: string, to: string): string {
  if (!whole.includes(from)) throw new Error(`"${from}" is not in the file`);
  try {
    readParts(
      whole.replace(from, () => to),
      'p',
    );
  } catch (error) {
    if (error instanceof PartsFileError) return error.message;
    throw error;
  }
  return 'accepted';
}

describe('what a parts file says of plans', () => {
  it('reads shop, day, times, tolerances, corner and wanted damping in SI', () => {
    const parts = readParts(whole);
    expect(parts.shop?.[0]).toMatchObject({ name: 'shop 200', bottle: { volume: 60e-6 } });
    expect(parts.day).toEqual([
      { time: 8.5 * 3600, temperature: 283.15 },
      { time: 14 * 3600, temperature: 303.15 },
    ]);
    expect(parts.timed).toEqual([{ name: 'front left', times: [4.1, 4.2], build: parts.builds[0] }]);
    expect(parts.tolerances?.holeDiameter).toBeCloseTo(2e-5, 12);
    expect(parts.tolerances?.gap).toBeCloseTo(1e-5, 12);
    expect(parts.tolerances?.viscosity).toBe(0.05);
    expect(parts.tolerances?.temperature).toBe(3);
    expect(parts.tolerances?.gasVolume).toBeCloseTo(1e-7, 15);
    expect(Object.keys(parts.tolerances ?? {})).toEqual([
      'holeDiameter',
      'gap',
      'viscosity',
      'temperature',
      'gasVolume',
    ]);
    expect(parts.builds[0]?.corner).toEqual({ sprungMass: 0.42, motionRatio: 0.65 });
    expect(parts.builds[0]?.wanted?.oil).toBe(parts.oils[1]);
    expect(parts.builds[0]?.wanted?.temperature).toBe(293.15);
  });

  it.each([
    ['3 °C', 3],
    ['1.5 K', 1.5],
    ['9 °F', 5],
  ])(
    'takes a temperature that may be off by %s as a difference, not as a place on the scale',
    (text, kelvin) => {
      const off = readParts(whole.replace('3 K', text)).tolerances?.temperature;
      expect(off).toBeCloseTo(kelvin, 12);
    },
  );

  it('leaves them out where the file does', () => {
    const parts = readParts(smallFile);
    expect(Object.keys(parts)).toEqual([
      'about',
      'assumptions',
      'oils',
      'pistons',
      'shocks',
      'springs',
      'builds',
    ]);
  });

  const cases = [
    ['bottle: { volume: 60 ml, price: 7 EUR }', 'density: 970 kg/m³', 'shop[0].bottle: is missing'],
    ['"8:30"', '"25:30"', 'day[0].time: must be a time of day such as "14:30", 24 hours, got "25:30"'],
    ['"8:30"', '"15:30"', 'day[1].time: must be later than the time before it'],
    ['temperature: 10 °C', 'temperature: 10', 'day[0].temperature: needs a unit'],
    ['[4.1 s, 4.2 s]', '[]', 'timed[0].times: must have 1 to 50 entries, got 0'],
    ['4.1 s', '-4.1 s', 'timed[0].times[0]: must be greater than 0 s'],
    ['gap: 10 µm', 'gap: 3 mm', 'tolerances.gap: must be 0 mm to 1 mm, got "3 mm"'],
    ['3 K', '25 K', 'tolerances.temperature: must be 0 K to 20 K, got "25 K"'],
    ['3 K', '-3 K', 'tolerances.temperature: must be 0 K to 20 K, got "-3 K"'],
    [
      '3 K',
      '3 mm',
      'tolerances.temperature: "3 mm" is a length; write a difference of temperatures such as "3 K"',
    ],
    ['5 %', '0.05', 'tolerances.viscosity: needs a unit, for example "5 %", got 0.05'],
    ['5 %', '50 %', 'tolerances.viscosity: must be 0 % to 30 %, got "50 %"'],
    ['5 %', '20 cSt', 'tolerances.viscosity: "20 cSt" is a kinematic viscosity'],
    ['0.1 ml', '1 l', 'tolerances.gas-volume: must be 0 ml to 20 ml, got "1 l"'],
    ['gas-volume', 'gas', 'tolerances.gas: unknown key; did you mean "gap"?'],
    ['gap:', 'gaps:', 'tolerances.gaps: unknown key; did you mean "gap"?'],
    ['mass: 420 g', 'mass: 42 kg', 'builds[0].corner.mass: must be 20 g to 10 kg, got "42 kg"'],
    ['0.65', '65', 'builds[0].corner.motion-ratio: must be a number from 0.2 to 1.5, got 65'],
    [
      'oil: mineral, at',
      'oil: minerals, at',
      'builds[0].wanted.oil: no oil is named "minerals"; did you mean "mineral"?',
    ],
  ] as const;
  for (const [from, to, expected] of cases) {
    it(`refuses ${to}`, () => {
      expect(refusal(from, to)).toContain(expected);
    });
  }

  it('wants a name of its own for each bottle of the shop', () => {
    const twice = plans.replace(
      'shop:\n',
      'shop:\n  - { name: shop 200, base: silicone, viscosity: 300 cSt, at: 25 °C, bottle: { volume: 60 ml } }\n',
    );
    expect(() => readParts(`${smallFile}${twice}`)).toThrow('shop[1].name: must be a name of its own');
  });

  const second = '  - { name: spare, shock: short 12, piston: two 1.7, oil: mineral }\n';
  const named = (build: string) =>
    `${smallFile}${second}timed:\n  - { name: left,${build} times: [4.1 s] }\n`;

  it('knows of which build a timed shock is one', () => {
    const parts = readParts(named(' build: spare,'));
    expect(parts.timed?.[0]?.build).toBe(parts.builds[1]);
  });

  it.each([
    ['', 'timed[0].build: is missing; write which of the builds it is: "front", "spare"'],
    [' build: sparr,', 'timed[0].build: no build is named "sparr"; did you mean "spare"?'],
    [' build: 3,', 'timed[0].build: must be a name as text, in quotes if it is a number, got 3'],
  ])('refuses a timed shock with "%s" for its build', (build, message) => {
    expect(() => readParts(named(build))).toThrow(message);
  });

  it('needs a build for a timed shock', () => {
    const text = 'dashpot: 1\ntimed:\n  - { name: left, times: [4.1 s] }\n';
    expect(() => readParts(text)).toThrow(
      'timed[0]: needs a build that it is one of: there are none under "builds"',
    );
  });
});
