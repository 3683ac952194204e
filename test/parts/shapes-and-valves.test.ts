import { describe, expect, it } from 'vitest';
import { damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { assembleShock } from '../../lib/parts/assembly/assembled-shock.js';
import { readParts } from '../../lib/parts/index.js';
import { changed } from './small-file.js';

const hole = '{ count: 2, diameter: 1.7 mm }';
const withHole = (more: string) => changed(hole, `{ count: 2, diameter: 1.7 mm, ${more} }`);
const shapeOf = (more: string) => readParts(withHole(more)).pistons[0]?.piston.holes[0]?.shape;

const disc = (change: Record<string, string> = {}) => {
  const keys = {
    face: 'shaft-side',
    covers: '[1]',
    'outer-diameter': '10.5 mm',
    'clamp-diameter': '5 mm',
    thickness: '0.1 mm',
    'elastic-modulus': '4 GPa',
    preload: '0.02 mm',
    ...change,
  };
  const lines = Object.entries(keys).map(([key, value]) => `        ${key}: ${value}\n`);
  const valve = `    valves:\n      -${lines.join('').slice(7)}`;
  return changed(`${hole}\n`, `{ count: 2, diameter: 1.7 mm, pitch-circle: 7.8 mm }\n${valve}`);
};

describe('hole shapes in a parts file', () => {
  it.each([
    ['blind-edge: { chamfer: 0.2 mm }', { kind: 'straight', blindEdge: { kind: 'chamfered', depth: 2e-4 } }],
    ['shaft-edge: { radius: 0.3 mm }', { kind: 'straight', shaftEdge: { kind: 'rounded', radius: 3e-4 } }],
    ['shaft-side-diameter: 1.9 mm', { kind: 'conical', shaftSideDiameter: 1.9e-3 }],
    [
      'shaft-side-diameter: 1.9 mm, shaft-side-length: 1 mm',
      { kind: 'stepped', shaftSideDiameter: 1.9e-3, shaftSideLength: 1e-3 },
    ],
    ['slot-travel: 0.5 mm', { kind: 'slot', travel: 5e-4 }],
  ])('%s', (text, shape) => {
    expect(shapeOf(text)).toMatchObject(shape);
  });

  it('takes 45° for a chamfer, or the angle given', () => {
    expect(shapeOf('blind-edge: { chamfer: 0.2 mm }')).toMatchObject({
      blindEdge: { halfAngle: Math.PI / 4 },
    });
    expect(shapeOf('blind-edge: { chamfer: 0.2 mm, angle: 30 ° }')).toMatchObject({
      blindEdge: { halfAngle: Math.PI / 6 },
    });
  });

  it.each([
    ['blind-edge: { chamfer: 3 mm }', 'it takes 3 mm of a plate of 2.5 mm, 0.5 mm too much'],
    [
      'blind-edge: { chamfer: 1.5 mm }, shaft-edge: { radius: 1.2 mm }',
      'with the other edge it takes 2.7 mm of a plate of 2.5 mm, 0.2 mm too much',
    ],
    ['blind-edge: { chamfer: 0.2 mm, radius: 0.1 mm }', 'must have either "chamfer" or "radius"'],
    ['blind-edge: { radius: 0.1 mm, angle: 45 ° }', 'has an "angle" but no "chamfer"'],
    ['shaft-side-diameter: -0.2 mm', 'shaft-side-diameter'],
    [
      'shaft-side-diameter: 1.9 mm, shaft-side-length: 3 mm',
      'must be less than the thickness of 2.5 mm, got 3 mm: 0.5 mm too long',
    ],
    ['shaft-side-length: 1 mm', 'needs "shaft-side-diameter" beside it'],
    ['slot-travel: 1 mm, shaft-side-diameter: 1.9 mm', 'cannot be combined'],
    ['slot-travel: 9 mm', 'do not fit on the piston'],
    ['pitch-circle: 1.5 mm', 'overlap on their "pitch-circle": holes that overlap by'],
    ['pitch-circle: 11 mm', 'break through the rim'],
  ])('refuses %s', (text, message) => {
    expect(() => readParts(withHole(text))).toThrow(message);
  });
});

describe('valves in a parts file', () => {
  it('are read in SI, with the discs counted from 0', () => {
    const [valve] = readParts(disc()).pistons[0]?.piston.valves ?? [];
    expect(valve).toMatchObject({
      covers: [0],
      outerDiameter: 0.0105,
      count: 1,
      poissonRatio: 0.3,
      preload: 2e-5,
    });
    expect(valve?.elasticModulus).toBeCloseTo(4e9, 0);
  });

  it('bind to an oil', () => {
    const [build] = readParts(disc()).builds;
    if (build === undefined) throw new Error('no build');
    const oil = fluidAt(createOil(build.oil.definition), 298.15);
    expect(damperModel(assembleShock(build).damper, oil).pistonFlow.valves).toHaveLength(1);
  });

  it.each([
    [{ covers: '[2]' }, 'must name one of the 1 hole sizes, each once, got 2'],
    [{ covers: '[1, 1]' }, 'must name one of the 1 hole sizes, each once, got 1'],
    [{ 'outer-diameter': '9 mm' }, 'must be more than 9.5 mm, the far edge of its holes, got 9 mm'],
    [{ 'clamp-diameter': '7 mm' }, 'must be less than 6.1 mm, the near edge of its holes, got 7 mm'],
    [
      { 'outer-diameter': '12.5 mm' },
      'must not be larger than the bore of 12 mm of "short 12": 0.5 mm too large',
    ],
    [{ preload: '0.13 mm' }, 'preload: must be at most the thickness of 0.1 mm, got 0.13 mm'],
    [{ face: 'top' }, 'shaft-side or blind-side'],
  ] as const)('%j is refused', (change, message) => {
    expect(() => readParts(disc(change))).toThrow(message);
  });

  it('that lift only after cavitation has begun are a remark and no error', () => {
    const remarks = (text: string) => readParts(text).builds.flatMap((build) => assembleShock(build).remarks);
    expect(remarks(disc())).toEqual([]);
    expect(remarks(disc({ 'elastic-modulus': '200 GPa' }))).toEqual([
      expect.stringMatching(
        /^Valve 1 lifts at [\d.]+ bar, but cavitation begins at 1\.[\d]+ bar at the latest: it lifts only after that, as the cavity squeezes the gas\.$/u,
      ),
    ]);
  });

  it('need a pitch circle', () => {
    const text = disc().replace(', pitch-circle: 7.8 mm', '');
    expect(() => readParts(text)).toThrow('must name hole sizes with one and the same "pitch-circle"');
  });
});

describe('a thinning oil in a parts file', () => {
  const oil = '    at: 25 °C\n';
  const thinning = (text: string) => changed(oil, `${oil}    shear-thinning: { ${text} }\n`);

  it('reads how an oil thins, and carries it to the temperature', () => {
    const text = thinning('law: cross, time: 6 µs, at: 25 °C, exponent: 0.7');
    const [part] = readParts(text).oils;
    if (part === undefined) throw new Error('no oil');
    const state = (kelvin: number) => fluidAt(createOil(part.definition), kelvin);
    expect(state(298.15).shearThinning).toMatchObject({ kind: 'cross', exponent: 0.7, floor: 0 });
    expect(state(298.15).shearThinning?.time).toBeCloseTo(6e-6, 12);
    // Time goes with viscosity over temperature (Rouse 1953, from memory).
    const ratio = state(273.15).kinematicViscosity / state(298.15).kinematicViscosity;
    expect((state(273.15).shearThinning?.time ?? 0) / 6e-6).toBeCloseTo((ratio * 298.15) / 273.15, 9);
  });

  it.each([
    ['law: cross, time: 6 µs, at: 25 °C, exponent: 1', 'must be at most 0.95 with the law "cross"'],
    ['law: carreau, time: 6 µs, at: 25 °C, exponent: 0', 'must be at least 0.05 with this law'],
    ['law: carreau, time: 6 µs, at: 25 °C, exponent: 0.5, bend: 2', 'goes with the law "carreau-yasuda"'],
    ['law: carreau-yasuda, time: 6 µs, at: 25 °C, exponent: 0.5', 'goes with the law "carreau-yasuda"'],
  ])('refuses %s', (text, message) => {
    expect(() => readParts(thinning(text))).toThrow(message);
  });
});
