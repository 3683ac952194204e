import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { bubbleRise } from '../../lib/fill/index.js';
import { shearThinningWarnings } from '../../lib/fluid/index.js';
import type { HoleShape, ViscosityDefinition, Warning, WarningCode } from '../../lib/index.js';
import {
  createOil,
  damperForce,
  damperModel,
  fluidAt,
  idelchikThickEdgeLaw,
  lichtarowiczLaw,
  type OilBase,
  unsteadyFlowWarnings,
  warningCodes,
} from '../../lib/index.js';
import { fallingBallViscosity, flowCupViscosity } from '../../lib/measure/index.js';
import { benchStroke, moveCorner, warmingRun } from '../../lib/motion/index.js';
import { sampleCorner } from '../motion/sample-corner.js';
import { sampleModel, sampleShock } from '../motion/sample-shock.js';

const page = readFileSync(new URL('../../docs/warnings.md', import.meta.url), 'utf8');
const rows = [...page.matchAll(/^\| `([a-z-]+)` \|(.+)\|$/gmu)].map(([, code = '', rest = '']) => ({
  code,
  cells: rest.split('|').map((cell) => cell.trim()),
}));

const { damper } = sampleModel();
const fluid = { kinematicViscosity: 3.8e-4, density: 970 };
const hole = { diameter: 0.0017, length: 0.0025 };
const point = { temperature: 298.15, kinematicViscosity: 350e-6 };

/** Warnings of a force through holes of a shape and a thickness over diameter. */
function ofHoles(shape: HoleShape | undefined, lengthRatio = 2, speed = 0.1, kinematicViscosity = 3.8e-4) {
  const thickness = 0.0025;
  const group = { count: 1, diameter: thickness / lengthRatio, ...(shape === undefined ? {} : { shape }) };
  const piston = { ...damper.piston, thickness, holes: [group] };
  const model = damperModel({ ...damper, piston }, { ...fluid, kinematicViscosity });
  return damperForce(model, { speed: -speed, position: 0.012 }).warnings;
}
const edge = (depth: number, degrees: number): HoleShape => ({
  kind: 'straight',
  blindEdge: { kind: 'chamfered', depth, halfAngle: (degrees * Math.PI) / 180 },
});
const step = (ratio: number): HoleShape => ({
  kind: 'stepped',
  shaftSideDiameter: 0.00125 * ratio,
  shaftSideLength: 0.00125,
});
const oil = (viscosity: ViscosityDefinition, temperature = 298.15, base: OilBase = 'petroleum') =>
  fluidAt(createOil({ base, viscosity }), temperature).warnings;
const points = (...viscosities: readonly number[]): ViscosityDefinition => ({
  kind: 'points',
  points: viscosities.map((viscosity, index) => ({
    temperature: 293.15 + 20 * index,
    kinematicViscosity: viscosity,
  })),
});
const bubble = (radius: number) =>
  bubbleRise({ radius, surface: 'clean' }, fluid, { bore: 0.012, surfaceTension: 0.021 }).warnings;
const landing = (dropHeight: number, stiffness = 60_000) =>
  moveCorner(
    sampleShock(),
    { ...sampleCorner, bumpStop: { from: 0.021, stiffness, damping: 0 } },
    { kind: 'landing', dropHeight },
  ).warnings;
const run = (power: number) =>
  warmingRun({
    body: { diameter: 0.016, length: 0.045, emissivity: 0.1 },
    heatCapacity: 15.5,
    airTemperature: 293.15,
    startTemperature: 293.15,
    parts: [{ duration: 300, windSpeed: 1, power: () => power }],
  }).warnings;
const thin = sampleShock({ kinematicViscosity: 5e-5 });
const fastStroke = { kind: 'sine', middle: 0.012, amplitude: 0.008, frequency: 30, cycles: 1 } as const;

/**
 * A case that has each warning, and its limit as the page writes it: worked from the limit of the warning by the factor from SI to the unit of the page.
 */
const cases: Readonly<Record<WarningCode, readonly [run: () => readonly Warning[], factor?: number]>> = {
  'ball-too-quick': [
    () =>
      fallingBallViscosity({
        ballDiameter: 0.004,
        ballDensity: 7800,
        tubeDiameter: 0.1,
        oilDensity: 970,
        stretch: 0.1,
        time: 0.3,
      }).warnings,
    1,
  ],
  'barry-viscosity-low': [
    () => oil({ kind: 'silicone', point: { ...point, kinematicViscosity: 50e-6 } }, 298.15, 'silicone'),
    1e6,
  ],
  'bubble-fills-bore': [() => bubble(0.004), 1],
  'bubble-not-round': [() => bubble(0.001), 1],
  cavitation: [
    () => damperForce(sampleModel({ releasePressure: 20_000 }), { speed: 2, position: 0.012 }).warnings,
    1,
  ],
  'cup-not-confirmed': [() => flowCupViscosity('ISO 4', 50).warnings],
  'cup-time-outside': [() => flowCupViscosity('Ford 2', 39).warnings, 1],
  'gas-nearly-full': [() => landing(0.4), 1],
  'hole-area-ratio-high': [
    () => {
      const piston = { ...damper.piston, holes: [{ count: 8, diameter: 0.002 }] };
      return damperForce(damperModel({ ...damper, piston }, fluid), { speed: -0.1, position: 0.01 }).warnings;
    },
    100,
  ],
  'hole-edge-angle-high': [() => ofHoles(edge(0.0002, 70)), 1],
  'hole-edge-angle-low': [() => ofHoles(edge(0.0002, 20)), 1],
  'hole-edge-depth-high': [() => ofHoles(edge(0.0006, 45)), 1],
  'hole-frequency-high': [() => unsteadyFlowWarnings(hole, fluid, 100, false), 1],
  'hole-frequency-high-for-mass': [() => unsteadyFlowWarnings(hole, fluid, 1000, true), 1],
  'hole-inertia-left-out': [() => benchStroke(thin, fastStroke).warnings, 1],
  'hole-length-ratio-high': [() => ofHoles(undefined, 7), 1],
  'hole-length-ratio-low': [() => ofHoles(edge(0.0001, 45), 0.4), 1],
  'hole-reynolds-number-high': [() => ofHoles(undefined, 2, 1, 2e-5), 1],
  'hole-reynolds-number-low': [() => idelchikThickEdgeLaw.rangeWarnings(2, 10), 1],
  'hole-step-high': [() => ofHoles(step(1.8)), 1],
  'hole-step-low': [() => ofHoles(step(1.1)), 1],
  'hole-taper-high': [() => ofHoles({ kind: 'conical', shaftSideDiameter: 0.00125 * 1.6 }), 1],
  'oil-warmer-than-body': [() => run(6), 1],
  'oil-warms': [() => run(3), 1],
  'piston-at-the-cap': [() => landing(0.6, 2000)],
  'shear-thinning': [() => shearThinningWarnings(1e-4, 1000)],
  'viscosity-extrapolated': [() => oil(points(200e-6, 80e-6), 260)],
  'viscosity-index-high': [() => oil({ kind: 'viscosity-index', point, viscosityIndex: 250 }), 1],
  'walther-residual-high': [() => oil(points(200e-6, 60e-6, 50e-6)), 100],
  'wheel-off-the-ground': [() => landing(0.4)],
};

describe('the list of warnings', () => {
  test('is that of the page, row for row and in order of the alphabet', () => {
    expect(rows.map(({ code }) => code).sort()).toEqual([...warningCodes]);
    expect([...warningCodes].sort()).toEqual([...warningCodes]);
  });

  test.each(rows)('$code says what it means, where its limit comes from and what to do', ({ cells }) => {
    expect(cells).toHaveLength(4);
    for (const cell of cells) expect(cell.length).toBeGreaterThan(0);
    expect(cells[2]).toMatch(/^(checked range|onset|choice|fact)/u);
  });

  test.each([...warningCodes])('%s happens, and its limit is the one of the page', (code) => {
    const [happens, factor] = cases[code];
    const warning = happens().find((one) => one.code === code);
    expect(warning?.value).not.toBe(undefined);
    expect(warning?.message.length).toBeGreaterThan(10);
    if (factor === undefined || warning === undefined) return;
    const written = rows.find((row) => row.code === code)?.cells[1] ?? '';
    const numbers = [...written.replaceAll(/(\d) (\d{3})/gu, '$1$2').matchAll(/\d+(?:\.\d+)?/gu)].map(Number);
    expect(numbers).toContain(Number((warning.limit * factor).toPrecision(6)));
  });

  test('laws of handbooks say their own lower end', () => {
    const [low] = lichtarowiczLaw.rangeWarnings(3, 1);
    expect(low).toMatchObject({ code: 'hole-reynolds-number-low', limit: 2.5 });
  });

  test('shear thinning begins at a shear rate of 0.05 over the time', () => {
    expect(shearThinningWarnings(1e-4, 501)[0]?.limit).toBeCloseTo(500, 9);
    expect(shearThinningWarnings(1e-4, 499)).toEqual([]);
  });
});
