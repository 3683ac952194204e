import { describe, expect, test } from 'vitest';
import { benchStroke } from '../../lib/motion/bench/bench-stroke.js';
import { airAt } from '../../lib/motion/heat/air.js';
import { heatToAir } from '../../lib/motion/heat/cylinder-cooling.js';
import { warmingRun } from '../../lib/motion/heat/warming-run.js';
import { relativeError } from '../published/published-rows.js';
import { sampleShock } from './sample-shock.js';

const body = { diameter: 0.016, length: 0.045, emissivity: 0.1 };
const run = { body, heatCapacity: 15.5, airTemperature: 293.15, startTemperature: 293.15 };

describe('air', () => {
  // Bergman et al., Introduction to Heat Transfer, Table A.4, 300 K: 15.89e-6 m²/s, 26.3e-3 W/(m K), 0.71 (from memory).
  test('at 300 K', () => {
    const { kinematicViscosity, conductivity, prandtlNumber } = airAt(300);
    expect(relativeError(kinematicViscosity, 15.89e-6)).toBeLessThan(0.015);
    expect(relativeError(conductivity, 26.3e-3)).toBeLessThan(0.01);
    expect(relativeError(prandtlNumber, 0.71)).toBeLessThan(0.01);
  });

  test('takes the more the faster it blows, and nothing at its own temperature', () => {
    expect(heatToAir(body, 313, 293, 8)).toBeGreaterThan(2 * heatToAir(body, 313, 293, 1));
    expect(heatToAir(body, 313, 293, 0)).toBeGreaterThan(0);
    expect(heatToAir(body, 293, 293, 8)).toBe(0);
    expect(heatToAir(body, 283, 293, 8)).toBeLessThan(0);
    // 77 W/(m² K) at 8 m/s, as Churchill & Bernstein give for air of that page; radiation adds half a per cent.
    expect(relativeError(heatToAir(body, 313, 293, 8) / (Math.PI * 0.016 * 0.045 * 20), 77)).toBeLessThan(
      0.03,
    );
  });
});

describe('a run', () => {
  test('warms to where the wind takes what the strokes make, and cools at rest', () => {
    const power = 1.5;
    const result = warmingRun({
      ...run,
      parts: [
        { duration: 900, windSpeed: 8, power: () => power },
        { duration: 300, windSpeed: 0, power: () => 0 },
      ],
    });
    const warmest = result.highestTemperature;
    expect(relativeError(heatToAir(body, warmest, 293.15, 8), power)).toBeLessThan(1e-3);
    expect(result.endTemperature).toBeLessThan(warmest);
    expect(result.endTemperature).toBeGreaterThan(293.15);
    expect(result.times.at(-1)).toBe(1200);
    expect(result.warnings.map(({ code }) => code)).toEqual(['oil-warms']);
  });

  test('strokes of warm oil make less heat, so that it warms less than at first', () => {
    // A silicone loses about 2 % of its viscosity with a kelvin.
    const stroke = { kind: 'sine', middle: 0.012, amplitude: 0.008, frequency: 3, cycles: 2 } as const;
    const power = (temperature: number): number => {
      const shock = sampleShock({ kinematicViscosity: 3.8e-4 * Math.exp(-0.018 * (temperature - 293.15)) });
      return 3 * (benchStroke(shock, stroke, { parts: 0 }).cycles[1]?.work ?? 0);
    };
    const fading = warmingRun({ ...run, parts: [{ duration: 600, windSpeed: 2, power }] });
    const steady = warmingRun({
      ...run,
      parts: [{ duration: 600, windSpeed: 2, power: () => power(293.15) }],
    });
    expect(fading.endTemperature).toBeLessThan(steady.endTemperature);
    const first = fading.powers[0] as number;
    const last = fading.powers.at(-1) as number;
    expect(last).toBeLessThan(first);
    expect(relativeError(last, power(fading.endTemperature))).toBeLessThan(1e-6);
  });

  // With power falling as exp(−b (T − T₀)) and heat going as h (T − T₀), the end is W(P b/h)/b: Lambert's W by its own definition.
  test('ends where Lambert says', () => {
    const [power, fade, duration] = [1, 0.02, 20_000];
    const result = warmingRun({
      ...run,
      parts: [{ duration, windSpeed: 5, power: (t) => power * Math.exp(-fade * (t - 293.15)) }],
    });
    const rise = result.endTemperature - 293.15;
    const h = heatToAir(body, result.endTemperature, 293.15, 5) / rise;
    const w = fade * rise;
    expect(relativeError(w * Math.exp(w), (power * fade) / h)).toBeLessThan(1e-5);
  });

  test('refuses a run without parts and power below 0', () => {
    expect(() => warmingRun({ ...run, parts: [] })).toThrow(/parts must be one or more/u);
    const parts = [{ duration: 10, windSpeed: 1, power: () => -1 }];
    expect(() => warmingRun({ ...run, parts })).toThrow(/parts\[0\]\.power/u);
  });
});
