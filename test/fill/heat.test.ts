import { describe, expect, test } from 'vitest';
import { closeShock } from '../../lib/fill/chamber/closed-shock.js';
import { atTemperature, coldestFillTemperature, lockTemperature } from '../../lib/fill/chamber/heat.js';
import { lockPosition, pressureInside } from '../../lib/fill/chamber/pressure-inside.js';
import { oilDensity } from '../../lib/fluid/oil/density.js';
import { atmosphere, chamber, closedAt, shaftArea } from './shock.js';

const silicone = (temperature: number) => oilDensity('silicone', temperature);
const pocket = { kind: 'air-pocket', volume: 0.4e-6 } as const;

describe('heat', () => {
  test('50 °C: the oil of a 20 °C fill grows by 2.774 %, the gas warms by 10.2 %', () => {
    const shock = closeShock(chamber, pocket, closedAt(0));
    // exp(9.121e-4 · 30) − 1 = 0.027741; of 4227.7 mm³ that is 117.28 mm³; gas 400 − 117.28 = 282.72 mm³
    const hot = atTemperature(shock, 323.15, silicone);
    expect(hot.oilExpansion - 1).toBeCloseTo(0.027741, 6);
    const expected = ((atmosphere * 400) / 282.72) * (323.15 / 293.15);
    expect(pressureInside(shock, 0, hot) / expected).toBeCloseTo(1, 4);
    expect(lockPosition(shock, hot)).toBeCloseTo(0.28272e-6 / shaftArea, 5);
  });

  test('lock temperature: the oil has grown by the gas that was spare', () => {
    const shock = closeShock(chamber, pocket, closedAt(0));
    const lock = lockTemperature(shock, 28e-3, silicone, 400) ?? Number.NaN;
    // 400 − 197.92 = 202.08 mm³ of 4227.7: ln(1.047799)/9.121e-4 = 51.19 K
    expect(lock - 293.15).toBeCloseTo(51.19, 2);
    expect(() => pressureInside(shock, 28e-3, atTemperature(shock, lock + 0.01, silicone))).toThrow(/lock/u);
    expect(pressureInside(shock, 28e-3, atTemperature(shock, lock - 0.01, silicone))).toBeGreaterThan(1e8);
    expect(lockTemperature(shock, 28e-3, silicone, 330)).toBeUndefined();
  });

  test('a shock that locks cold is refused', () => {
    const shock = closeShock(chamber, { kind: 'air-pocket', volume: 0.1e-6 }, closedAt(0));
    expect(() => lockTemperature(shock, 28e-3, silicone, 400)).toThrow(/hydraulic lock/u);
  });

  test('coldest fill that leaves a reserve on the hottest oil', () => {
    const close = (temperature: number) =>
      closeShock(chamber, { kind: 'air-pocket', volume: 0.25e-6 }, { ...closedAt(0), temperature });
    const day = { coldest: 270, hottest: 323.15, reserve: 0.02e-6 };
    const fill = coldestFillTemperature(close, day, silicone) ?? Number.NaN;
    // 250 − 197.92 − 20 = 32.08 mm³ of 4377.7: ln(1.0073281)/9.121e-4 = 8.005 K below the hottest
    expect(323.15 - fill).toBeCloseTo(8.005, 2);
    expect(coldestFillTemperature(close, { ...day, hottest: 275 }, silicone)).toBe(270);
    expect(coldestFillTemperature(close, { ...day, reserve: 0.1e-6 }, silicone)).toBeUndefined();
  });
});
