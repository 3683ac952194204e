import { describe, expect, test } from 'vitest';
import { damperModel } from '../../lib/damper/damper-model.js';
import { playOfPiston } from '../../lib/damper/play-of-piston.js';
import { annularGapFlow } from '../../lib/flow/gap/annular-gap.js';
import { gapPlayBounds, largestTilt } from '../../lib/flow/gap/gap-play.js';
import { sampleModel } from '../motion/sample-shock.js';

const gap = (height: number) => ({
  bore: 0.012,
  pistonDiameter: 0.012 - 2 * height,
  length: 0.0025,
  eccentricity: 0,
});

/**
 * Flow through a thin gap over that of an upright centred piston, by a net of resistances along and around it, each cell with the thin law of its height; `aside` is
 * the eccentricity of the middle, `tilt` that of the ends less it. Gauss-Seidel with over-relaxation; a separate way from the closed forms.
 */
function netFlow(aside: number, tilt: number): number {
  const [along, around] = [24, 32];
  const circumference = Math.PI * (0.012 - 0.05e-3);
  const [dz, ds] = [0.0025 / along, circumference / around];
  const height = (z: number, turn: number) => 1 + (aside + tilt * (2 * z - 1)) * Math.cos(turn);
  const across = (i: number, j: number) =>
    height(i / along, (2 * Math.PI * (j + 0.5)) / around) ** 3 * (ds / dz);
  const sideways = (i: number, j: number) =>
    height((i + 0.5) / along, (2 * Math.PI * (j + 1)) / around) ** 3 * (dz / ds);
  const pressure = Array.from(
    { length: along * around },
    (_, cell) => 1 - (Math.floor(cell / around) + 0.5) / along,
  );
  const at = (i: number, j: number) => pressure[i * around + ((j + around) % around)] ?? 0;
  for (let sweep = 0; sweep < 400; sweep++) {
    for (let i = 0; i < along; i++) {
      for (let j = 0; j < around; j++) {
        const front = across(i, j) * (i === 0 ? 2 : 1);
        const behind = across(i + 1, j) * (i === along - 1 ? 2 : 1);
        const [left, right] = [sideways(i, j - 1), sideways(i, j)];
        const sum =
          front * (i === 0 ? 1 : at(i - 1, j)) +
          behind * (i === along - 1 ? 0 : at(i + 1, j)) +
          left * at(i, j - 1) +
          right * at(i, j + 1);
        const cell = i * around + j;
        const now = pressure[cell] ?? 0;
        pressure[cell] = now + 1.8 * (sum / (front + behind + left + right) - now);
      }
    }
  }
  let flow = 0;
  for (let j = 0; j < around; j++) flow += 2 * across(0, j) * (1 - at(0, j));
  return flow / (circumference / 0.0025);
}

describe('a piston that sits in its bore by its play', () => {
  test('can tilt by its play over its length: 0.1 mm over 2.5 mm', () => {
    expect(largestTilt(gap(0.05e-3))).toBeCloseTo(0.04, 12);
  });

  test.each([
    [0, 0],
    [0, 0.95],
    [0.3, 0.6],
    [0.6, 0.35],
    [0.95, 0],
  ])('%d aside and %d askew: a net of resistances lies within the bounds', (aside, tilt) => {
    const { least, most } = gapPlayBounds(gap(0.05e-3));
    const flow = netFlow(aside, tilt);
    expect(flow).toBeGreaterThan(least);
    expect(flow).toBeLessThan(most);
  });

  test('the net meets closed forms: 1 upright, 1 + 1.5 ε² aside; askew at most √1.5 t/arctan(√1.5 t), at least 1 − t² + ⅜ t⁴', () => {
    expect(netFlow(0, 0)).toBeCloseTo(1, 6);
    expect(Math.abs(netFlow(0.6, 0) / 1.54 - 1)).toBeLessThan(1e-3);
    const askew = netFlow(0, 0.8);
    expect(askew).toBeGreaterThan(1 - 0.64 + (3 / 8) * 0.4096);
    expect(askew).toBeLessThan(1.002 * (0.9798 / Math.atan(0.9798)));
  });

  test('its ends take 1.25 heights of length: 2.4 % at a fiftieth of the length', () => {
    const { least, most } = gapPlayBounds(gap(0.05e-3));
    expect(least).toBeCloseTo(0.375 / 1.025, 12);
    expect(most).toBe(2.5);
  });

  test('its ends bring the gap of the piston that was solved in three dimensions within 1 %: 19.96 in units of viscosity, speed and mm', () => {
    const wide = gap(0.3e-3);
    const fluid = { density: 1000, kinematicViscosity: 1e-3 };
    const driven = annularGapFlow(wide, fluid, 487.9e3, 0) * 1e6;
    const dragged = annularGapFlow(wide, fluid, 0, 1) * 1e6;
    const { least } = gapPlayBounds(wide);
    // The wall drags 8.5 % more along, as its own solution says (docs/piston.md).
    expect(Math.abs((driven * (least / 0.375) + 1.085 * dragged) / 19.96 - 1)).toBeLessThan(0.01);
  });
});

describe('pressure drop of a piston with play', () => {
  test('a real gap: next to nothing, more one way and less the other', () => {
    const { more, less } = playOfPiston(sampleModel(), -0.05);
    // The rim takes about 0.03 % of the oil: 1.5 times that less, five eighths of it more.
    expect(more).toBeGreaterThan(0);
    expect(less).toBeLessThan(0);
    expect(more).toBeLessThan(5e-4);
    expect(less).toBeGreaterThan(-1e-3);
    expect(-less / more).toBeCloseTo(1.5 / (1 - gapPlayBounds(sampleModel().pistonFlow.gap).least), 2);
  });

  test('a piston without holes: the rim is all, so that the drop goes against its factor', () => {
    const { damper, fluid } = sampleModel();
    const solid = (eccentricity: number) =>
      damperModel({ ...damper, piston: { ...damper.piston, holes: [], eccentricity } }, fluid);
    const { least } = gapPlayBounds(solid(0).pistonFlow.gap);
    const centred = playOfPiston(solid(0), 0.001);
    expect(centred.more).toBeCloseTo(1 / least - 1, 6);
    expect(centred.less).toBeCloseTo(1 / 2.5 - 1, 6);
    // Off centre by 0.6 the model lets 1.54 times as much past.
    const aside = playOfPiston(solid(0.6), 0.001);
    expect(aside.more).toBeCloseTo(1.54 / least - 1, 6);
    expect(aside.less).toBeCloseTo(1.54 / 2.5 - 1, 6);
  });

  test('a shaft that stands is refused', () => {
    expect(() => playOfPiston(sampleModel(), 0)).toThrow(
      'speed must be either way and at least 1e-30 m/s, got 0 m/s',
    );
    expect(() => playOfPiston(sampleModel(), -5e-324)).toThrow('speed must be');
    expect(playOfPiston(sampleModel(), 1e-30).more).toBeCloseTo(playOfPiston(sampleModel(), 1e-9).more, 6);
  });
});

test('moves a piston by what docs/piston.md says', () => {
  const { damper } = sampleModel();
  const moved = (height: number, speed: number): readonly number[] => {
    const holes = [{ count: 2, diameter: 0.0017 }];
    const piston = { diameter: 0.012 - 2 * height, thickness: 0.0025, holes, eccentricity: 0 };
    const model = damperModel(
      { ...damper, bore: 0.012, piston },
      { kinematicViscosity: 380e-6, density: 970 },
    );
    const { more, less } = playOfPiston(model, speed);
    return [more, less].map((part) => Number((100 * part).toFixed(1)));
  };
  expect(moved(0.03e-3, -0.3)).toEqual([0, -0.1]);
  expect(moved(0.1e-3, -0.03)).toEqual([0.7, -1.6]);
  expect(moved(0.1e-3, -0.3)).toEqual([1.2, -2.8]);
});
