import { describe, expect, test } from 'vitest';
import {
  ballWallFactor,
  fallingBallReading,
  fallingBallViscosity,
} from '../../lib/measure/oil/falling-ball.js';
import { type FlowCup, flowCupViscosity } from '../../lib/measure/oil/flow-cup.js';
import { checkRow } from '../measure/invented-shock.js';

describe('oil by itself', () => {
  test('a worked answer for a ball in open oil: 1.237 Pa·s', () => {
    type Ball = { mass: number; radius: number; density: number; speed: number };
    const { inputs, expected } = checkRow<Ball, number>('ball-stokes');
    const ballDensity = inputs.mass / ((4 / 3) * Math.PI * inputs.radius ** 3);
    const found = fallingBallViscosity({
      ballDiameter: 2 * inputs.radius,
      ballDensity,
      tubeDiameter: 1e6,
      oilDensity: inputs.density,
      stretch: inputs.speed,
      time: 1,
    });
    expect((found.kinematicViscosity * inputs.density) / expected).toBeCloseTo(1, 7);
    expect(found.warnings.map(({ code }) => code)).toEqual(['ball-too-quick']);
  });

  test('Faxén 1923, and Haberman & Sayre 1958 within 0.2 %', () => {
    const faxen = checkRow<{ k: number[] }, number[]>('ball-wall-faxen');
    const haberman = checkRow<{ k: number[] }, number[]>('ball-wall-haberman');
    for (const index of [0, 1]) {
      const factor = ballWallFactor(faxen.inputs.k[index] ?? 0);
      expect(Math.abs(factor - (faxen.expected[index] ?? 0))).toBeLessThan(0.0001);
      expect(Math.abs(factor / (haberman.expected[index] ?? 0) - 1)).toBeLessThan(0.002);
    }
    expect(() => ballWallFactor(0.2)).toThrow('ballDiameter / tubeDiameter');
  });

  test('a ball of 1.5 mm takes 5.10 s over 100 mm of 385 mm²/s, known to 2.5 %', () => {
    type Design = {
      ball: number;
      ballDensity: number;
      tube: number;
      density: number;
      kinematicViscosity: number;
      stretch: number;
    };
    const { inputs, expected } = checkRow<Design, { time: number; reynolds: number }>('ball-design');
    const ball = {
      ballDiameter: inputs.ball,
      ballDensity: inputs.ballDensity,
      tubeDiameter: inputs.tube,
      oilDensity: inputs.density,
      stretch: inputs.stretch,
      time: expected.time,
    };
    const found = fallingBallViscosity(ball);
    expect(found.kinematicViscosity / inputs.kinematicViscosity).toBeCloseTo(1, 6);
    expect(found.reynoldsNumber / expected.reynolds).toBeCloseTo(1, 6);
    expect(found.warnings).toEqual([]);
    const doubt = checkRow<
      { uTime: number; uDiameter: number; uDensities: number; uTemperature: number },
      number
    >('ball-uncertainty');
    const reading = fallingBallReading(ball, 295.15, {
      ballDiameter: doubt.inputs.uDiameter,
      densityDifference: doubt.inputs.uDensities,
      time: doubt.inputs.uTime,
    });
    // The row has the thermometer in it, 2.0 % a kelvin, which a fit knows as an unknown.
    const thermometer = (doubt.inputs.uTemperature * Math.LN10 * 763.1) / 295.15 ** 2;
    expect(Math.abs(Math.hypot(reading.relativeUncertainty, thermometer) / doubt.expected - 1)).toBeLessThan(
      1e-3,
    );
  });

  test.each([
    ['ford-1', 'Ford 1', ['cup-time-outside']],
    ['ford-3', 'Ford 3', []],
    ['ford-4', 'Ford 4', []],
    ['iso2431-3', 'ISO 3', ['cup-not-confirmed']],
    ['iso2431-4', 'ISO 4', ['cup-not-confirmed']],
    ['iso2431-6', 'ISO 6', ['cup-not-confirmed']],
  ] as const)('%s by ASTM D1200 or ISO 2431', (id, cup, codes) => {
    const { inputs, expected } = checkRow<{ t: number }, number>(id);
    const found = flowCupViscosity(cup, inputs.t);
    // Printed to 1e-4.
    expect(found.kinematicViscosity * 1e6).toBeCloseTo(expected, 4);
    expect(found.warnings.map(({ code }) => code)).toEqual(codes);
  });

  test('an unknown cup and an impossible time are refused', () => {
    expect(() => flowCupViscosity('Ford 9' as FlowCup, 40)).toThrow('cup must be one of');
    expect(() => flowCupViscosity('Ford 1', 20)).toThrow('time must be 55 to 100');
  });
});
