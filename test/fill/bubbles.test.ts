import { describe, expect, test } from 'vitest';
import {
  dissolutionTime,
  releasedAir,
  saturationAfterVacuum,
} from '../../lib/fill/air/bubble-dissolution.js';
import { dragIncrease } from '../../lib/fill/air/bubble-drag.js';
import { bubblePassage } from '../../lib/fill/air/bubble-passage.js';
import { bubbleRise, stokesSpeed } from '../../lib/fill/air/bubble-rise.js';
import { largestBubbleLeft, waitingTime } from '../../lib/fill/air/waiting-time.js';
import { polytropicExponent } from '../../lib/gas/polytropic-exponent.js';
import { fluid } from './shock.js';

const body = { bore: 12e-3, surfaceTension: 0.021 };
const rise = (radius: number) => bubbleRise({ radius, surface: 'rigid' }, fluid, body);

describe('bubble rise', () => {
  test('0.5 mm bubble in 350 mm²/s by hand', () => {
    // 2 · (0.25e-3)² · 9.80665 / (9 · 350e-6) = 0.38915 mm/s; walls at 1/24 of the bore take 8.76 %.
    expect(stokesSpeed(0.25e-3, 970, 970 * 350e-6)).toBeCloseTo(0.389_15e-3, 7);
    expect(rise(0.25e-3).speed).toBeCloseTo(0.355e-3, 6);
    expect(rise(0.25e-3).warnings).toEqual([]);
  });

  test('a clean bubble in creeping flow rises half as fast again, and is held less by the wall', () => {
    const clean = bubbleRise({ radius: 0.1e-3, surface: 'clean' }, fluid, { ...body, bore: 1e6 });
    const rigid = bubbleRise({ radius: 0.1e-3, surface: 'rigid' }, fluid, { ...body, bore: 1e6 });
    expect(clean.speed / rigid.speed).toBeCloseTo(1.5, 3);
    expect(clean.reynoldsNumber).toBeCloseTo((2 * 0.1e-3 * clean.speed) / 350e-6, 9);
  });

  test('without motion there is no inertia', () => {
    expect([dragIncrease(0, 'clean'), dragIncrease(0, 'rigid')]).toEqual([1, 1]);
  });

  test('inertia slows a big bubble in thin oil', () => {
    const thin = { density: 860, kinematicViscosity: 32e-6 };
    const big = bubbleRise({ radius: 1e-3, surface: 'rigid' }, thin, { ...body, bore: 1e6 });
    const creeping = stokesSpeed(1e-3, 860, 860 * 32e-6);
    expect(big.speed * (1 + 0.15 * big.reynoldsNumber ** 0.687)).toBeCloseTo(creeping, 9);
    expect(big.speed).toBeLessThan(0.8 * creeping);
  });

  test('warns of bubbles that flatten and of bubbles that fill the bore', () => {
    expect(rise(1e-3).eotvosNumber).toBeCloseTo((970 * 9.806_65 * 4e-6) / 0.021, 9);
    expect(rise(1e-3).warnings.map(({ code }) => code)).toEqual(['bubble-not-round']);
    const tight = bubbleRise({ radius: 0.4e-3, surface: 'rigid' }, fluid, { ...body, bore: 1.2e-3 });
    expect(tight.warnings.map(({ code }) => code)).toEqual(['bubble-fills-bore']);
  });

  test('bad input is refused by name', () => {
    expect(() => rise(0)).toThrow(/radius/u);
    expect(() => rise(6e-3)).toThrow(/ratio of diameters/u);
    expect(() => stokesSpeed(1e-4, -1, 0.3)).toThrow(/densityDifference/u);
    expect(() => stokesSpeed(1e-4, 970, 0)).toThrow(/dynamicViscosity/u);
    expect(() =>
      bubbleRise({ radius: 1e-4, surface: 'clean' }, fluid, { ...body, surfaceTension: 0 }),
    ).toThrow(/surfaceTension/u);
  });
});

describe('waiting', () => {
  const speed = (radius: number) => rise(radius).speed;

  test('38 mm of oil and a 0.5 mm bubble take 107 s', () => {
    expect(waitingTime(0.25e-3, 38e-3, speed)).toBeCloseTo(38e-3 / speed(0.25e-3), 9);
    expect(waitingTime(0.25e-3, 38e-3, speed)).toBeCloseTo(107, 0);
  });

  test('the largest bubble left is the inverse', () => {
    expect(largestBubbleLeft(waitingTime(0.2e-3, 38e-3, speed), 38e-3, speed, 2e-3)).toBeCloseTo(0.2e-3, 12);
  });

  test('a short wait leaves even the largest, an endless one none that is seen', () => {
    expect(largestBubbleLeft(0.1, 38e-3, speed, 1e-3)).toBe(1e-3);
    expect(largestBubbleLeft(1e9, 38e-3, speed, 1e-3)).toBe(0);
    expect(() => largestBubbleLeft(0, 38e-3, speed, 1e-3)).toThrow(/time/u);
    expect(() => waitingTime(1e-4, 0, speed)).toThrow(/height/u);
  });
});

describe('passage through piston holes', () => {
  const oil = { density: 970, surfaceTension: 0.021 };

  test('a 1.2 mm hole stops bubbles from 1.5 mm, by hand', () => {
    const { stuckFrom, pressureNeeded } = bubblePassage(0.6e-3, oil);
    // 2σ/R + 2ρgR = 2σ/r: 55.63 + 14.36 = 70.0 Pa at R = 0.755 mm
    const radius = stuckFrom ?? Number.NaN;
    expect(radius).toBeCloseTo(0.755e-3, 6);
    expect((2 * 0.021) / radius + 2 * 970 * 9.806_65 * radius).toBeCloseTo(70, 9);
    // 70.0 less twice 970 · 9.80665 · 1.4858 mm
    expect(pressureNeeded).toBeCloseTo(70 - 28.27, 1);
  });

  test('both forms of the law meet where the hole is half a capillary length', () => {
    const half = Math.sqrt(0.021 / (970 * 9.806_65)) / 2;
    const [below, above] = [bubblePassage(half * (1 - 1e-9), oil), bubblePassage(half * (1 + 1e-9), oil)];
    expect((below.stuckFrom ?? 0) / (above.stuckFrom ?? 1)).toBeCloseTo(1, 3);
  });

  test('a wide hole stops none', () => {
    expect(bubblePassage(1.5e-3, oil)).toEqual({ stuckFrom: undefined, pressureNeeded: 0 });
    expect(() => bubblePassage(0, oil)).toThrow(/holeRadius/u);
  });
});

describe('dissolved air', () => {
  const bubble = {
    radius: 0.25e-3,
    pressure: 101_325,
    saturation: 0.5,
    airSolubility: 0.18,
    diffusivity: 2e-9,
    surfaceTension: 0,
  };

  test('without surface tension the time is R²/(2 D L (1 − f))', () => {
    expect(dissolutionTime(bubble)).toBeCloseTo(0.25e-3 ** 2 / (2 * 2e-9 * 0.18 * 0.5), 6);
  });

  test('in saturated oil surface tension alone dissolves it, in R²/(D L) (R/(3τ) + 1/3)', () => {
    const tension = (2 * 0.021) / 101_325;
    const expected = (0.25e-3 ** 2 / (2e-9 * 0.18)) * (0.25e-3 / (3 * tension) + 1 / 3);
    expect(dissolutionTime({ ...bubble, saturation: 1, surfaceTension: 0.021 }) / expected).toBeCloseTo(1, 9);
  });

  test('in oversaturated oil it never dissolves', () => {
    expect(dissolutionTime({ ...bubble, saturation: 1.2 })).toBe(Number.POSITIVE_INFINITY);
    expect(dissolutionTime({ ...bubble, saturation: 1 })).toBe(Number.POSITIVE_INFINITY);
    expect(() => dissolutionTime({ ...bubble, diffusivity: 0 })).toThrow(/diffusivity/u);
  });

  test('Henry: a twentieth of the pressure leaves a twentieth of the air', () => {
    expect(saturationAfterVacuum(5_066.25, 101_325)).toBeCloseTo(0.05, 12);
    expect(() => saturationAfterVacuum(2e5, 101_325)).toThrow(/vacuum/u);
  });

  test('Henry: 4 ml of silicone at 0.8 bar gives off 0.18 · 4 ml · (1/0.8 − 1)', () => {
    expect(releasedAir(4e-6, 0.18, { saturated: 1e5, now: 0.8e5 })).toBeCloseTo(0.18e-6, 15);
    expect(releasedAir(4e-6, 0.18, { saturated: 1e5, now: 1.2e5 })).toBe(0);
  });
});

describe('polytropic exponent', () => {
  test('small and slow is isothermal, large and fast is adiabatic, in between it rises', () => {
    expect(polytropicExponent(1e-4, 1)).toBeCloseTo(1, 5);
    expect(polytropicExponent(0.1, 1e3)).toBeCloseTo(1.4, 2);
    const exponents = [0.5e-3, 1e-3, 2e-3, 4e-3, 8e-3, 16e-3].map((radius) => polytropicExponent(radius, 5));
    expect([...exponents].sort((a, b) => a - b)).toEqual(exponents);
  });

  test('the series for small bubbles meets the closed form', () => {
    // y = R √(π f/D) = 0.01 at f = 1 Hz
    const radius = 0.01 * Math.sqrt(2.2e-5 / Math.PI);
    expect(polytropicExponent(radius * 0.999, 1)).toBeCloseTo(polytropicExponent(radius * 1.001, 1), 9);
    expect(polytropicExponent(1e9, 1)).toBeCloseTo(1.4, 6);
    expect(() => polytropicExponent(1e-3, 0)).toThrow(/frequency/u);
  });

  test('a thick layer of heat: γ (1 − 3 (γ − 1) √(χ/2)) near the adiabatic end', () => {
    // Leading term of the law for √χ ≪ 1, taken from its own formula by hand: z coth z ≈ z.
    const [radius, frequency] = [0.05, 100];
    const chi = 2.2e-5 / (2 * Math.PI * frequency * radius ** 2);
    expect(polytropicExponent(radius, frequency)).toBeCloseTo(1.4 * (1 - 1.2 * Math.sqrt(chi / 2)), 5);
  });
});
