import { describe, expect, test } from 'vitest';
import { closeShock } from '../../lib/fill/chamber/closed-shock.js';
import { closingPositionForForce, quietClosing } from '../../lib/fill/chamber/closing-position.js';
import { conditionAtClosing, lockPosition, pressureInside } from '../../lib/fill/chamber/pressure-inside.js';
import { restBand } from '../../lib/fill/chamber/rest-band.js';
import { positionAtForce, staticForce } from '../../lib/fill/chamber/static-force.js';
import type { Compensator } from '../../lib/gas/compensator.js';
import { HydraulicLock } from '../../lib/gas/hydraulic-lock.js';
import { atmosphere, chamber, closedAt, shaftArea } from './shock.js';

const swept = (millimetres: number) => shaftArea * millimetres * 1e-3;
const closed = (compensator: Compensator, position: number) =>
  closeShock(chamber, compensator, closedAt(position));

describe('compensators', () => {
  test('air pocket: Boyle by hand', () => {
    const shock = closed({ kind: 'air-pocket', volume: 0.4e-6 }, 0);
    // 400/(400 − 197.92) = 1.97942 bar-ratio; 7.06858 mm² · 0.97942 · 101.325 kPa = 0.70149 N
    expect(staticForce(shock, 28e-3)).toBeCloseTo(0.7015, 4);
    expect(lockPosition(shock)).toBeCloseTo(0.4e-6 / shaftArea, 6);
  });

  test('pulled out past the closing position it sucks in', () => {
    const shock = closed({ kind: 'air-pocket', volume: 0.4e-6 }, 14e-3);
    // 400/(400 + 98.96) = 0.80167
    expect(staticForce(shock, 0)).toBeCloseTo(-shaftArea * atmosphere * (1 - 0.80167), 5);
  });

  test('fast: adiabatic by hand', () => {
    const shock = closed({ kind: 'air-pocket', volume: 0.4e-6 }, 0);
    const fast = { ...conditionAtClosing(shock), polytropicExponent: 1.4 };
    // 1.97942^1.4 = 2.60113
    expect(pressureInside(shock, 28e-3, fast) / atmosphere).toBeCloseTo(2.6011, 3);
  });

  test('sealed bladder: gas and rubber add up', () => {
    const stiffness = 5e10;
    const shock = closed({ kind: 'bladder', volume: 0.4e-6, stiffness, vented: false }, 0);
    const gas = atmosphere * (400 / (400 - 1e9 * swept(28)));
    expect(pressureInside(shock, 28e-3)).toBeCloseTo(gas + stiffness * swept(28), 2);
  });

  test('vented bladder: rubber alone, until it is full', () => {
    const shock = closed({ kind: 'bladder', volume: 0.15e-6, stiffness: 1e11, vented: true }, 0);
    expect(pressureInside(shock, 20e-3)).toBeCloseTo(atmosphere + 1e11 * swept(20), 2);
    // Full at 150 mm³ of shaft, 21.22 mm
    expect(() => staticForce(shock, 22e-3)).toThrow(HydraulicLock);
    expect(positionAtForce(shock, 1)).toBeUndefined();
  });

  test('foam: only its gas gives way', () => {
    const shock = closed({ kind: 'foam', volume: 0.4e-6, gasFraction: 0.85, stiffness: 0 }, 0);
    expect(pressureInside(shock, 28e-3) / atmosphere).toBeCloseTo(340 / (340 - 197.92), 4);
  });

  test('emulsion: a fraction of the whole room', () => {
    const shock = closed({ kind: 'emulsion', gasFraction: 0.1 }, 0);
    expect(pressureInside(shock, 28e-3) / atmosphere).toBeCloseTo(462.77 / (462.77 - 197.92), 4);
  });

  test('free bubbles beside a stiff bladder share the volume at one pressure', () => {
    const stiffness = 1e11;
    const bladder = { kind: 'bladder', volume: 0.2e-6, stiffness, vented: true } as const;
    const shock = closeShock(chamber, bladder, { ...closedAt(0), freeAir: 0.05e-6 });
    const pressure = pressureInside(shock, 20e-3);
    const shares = (pressure - atmosphere) / stiffness + 0.05e-6 * (1 - atmosphere / pressure);
    expect(shares / swept(20)).toBeCloseTo(1, 6);
  });

  test('sealed with nothing it locks where it was closed, and says where', () => {
    const shock = closed({ kind: 'none' }, 10e-3);
    expect(staticForce(shock, 10e-3)).toBe(0);
    expect(() => staticForce(shock, 10.01e-3)).toThrow(
      /position must be below the hydraulic lock at 0\.01 m/u,
    );
    try {
      staticForce(shock, 20e-3);
      expect.unreachable();
    } catch (error) {
      expect(error).toBeInstanceOf(HydraulicLock);
      expect((error as HydraulicLock).lockPosition).toBeCloseTo(10e-3, 15);
    }
    // Pulled out, the oil tears: the whole pressure outside holds the shaft.
    expect(staticForce(shock, 9e-3)).toBeCloseTo(-shaftArea * atmosphere, 6);
  });

  test('a bladder of stiff rubber tears the oil before it follows', () => {
    const shock = closed({ kind: 'bladder', volume: 0.01e-6, stiffness: 5e12, vented: false }, 28e-3);
    expect(pressureInside(shock, 0)).toBe(0);
  });
});

describe('where the shaft rests', () => {
  const pocket = { kind: 'air-pocket', volume: 0.4e-6 } as const;

  test('band by hand: the friction over the shaft area is a pressure, Boyle gives the volume', () => {
    const shock = closed(pocket, 14e-3);
    const relative = 0.1 / shaftArea / atmosphere;
    const band = restBand(shock, 0.1);
    const volume = (ratio: number) => 0.4e-6 * (1 - 1 / ratio);
    expect(band.fromExtension).toBeCloseTo(14e-3 + volume(1 - relative) / shaftArea, 8);
    expect(band.fromCompression).toBeCloseTo(14e-3 + volume(1 + relative) / shaftArea, 8);
    expect(band.fromExtension).toBeLessThan(14e-3);
  });

  test('without friction it rests where it was closed', () => {
    const { fromExtension, fromCompression } = restBand(closed(pocket, 14e-3), 0);
    expect(fromExtension).toBeCloseTo(14e-3, 12);
    expect(fromCompression).toBeCloseTo(14e-3, 12);
  });

  test('friction above all gas forces holds it anywhere', () => {
    expect(restBand(closed(pocket, 14e-3), 5)).toEqual({ fromExtension: 0, fromCompression: 28e-3 });
  });

  test('a vented bladder that is full ends the way: soft walls never push as hard as the seals hold', () => {
    // 0.05 ml make room for a shaft of a known section, from where it was closed on; its rubber adds 50 Pa by then.
    const full = closed({ kind: 'bladder', volume: 0.05e-6, stiffness: 1e9, vented: true }, 10e-3);
    const { fromCompression } = restBand(full, 0.1);
    expect(fromCompression).toBeCloseTo(10e-3 + 0.05e-6 / shaftArea, 6);
  });

  test('a shock without gas has no band', () => {
    expect(() => restBand(closed({ kind: 'none' }, 0), 0.1)).toThrow(/compensator\.kind/u);
  });
});

describe('where to close', () => {
  const pocket = { kind: 'air-pocket', volume: 0.4e-6 } as const;
  const { position: _, ...closing } = closedAt(0);

  test('for a wanted push at full compression', () => {
    const position = closingPositionForForce(chamber, pocket, closing, { force: 0.3, position: 28e-3 });
    expect(staticForce(closed(pocket, position), 28e-3)).toBeCloseTo(0.3, 9);
  });

  test('forces out of reach are refused with those within reach', () => {
    const wanted = { force: 2, position: 28e-3 };
    expect(() => closingPositionForForce(chamber, pocket, closing, wanted)).toThrow(
      /wanted\.force must be 0\.000 to 0\.701 N, got 2 N/u,
    );
    const small = { kind: 'air-pocket', volume: 0.05e-6 } as const;
    const sucking = { force: -1, position: 28e-3 };
    expect(() => closingPositionForForce(chamber, small, closing, sucking)).toThrow(/0\.000 or more N/u);
  });

  test('dead over a working stroke: it sucks as hard as it pushes', () => {
    const { position, largestForce } = quietClosing(chamber, pocket, closing, { from: 4e-3, to: 24e-3 });
    const shock = closed(pocket, position);
    expect(staticForce(shock, 24e-3)).toBeCloseTo(largestForce, 9);
    expect(staticForce(shock, 4e-3)).toBeCloseTo(-largestForce, 9);
    // Boyle by hand: V/(V−a) − 1 = 1 − V/(V+b), a + b = 141.37 mm³, V = 400 mm³: relative force 0.17152
    expect(largestForce / shaftArea / atmosphere).toBeCloseTo(0.1715, 4);
  });

  test('nothing that makes room cannot be made dead', () => {
    expect(() => quietClosing(chamber, { kind: 'none' }, closing, { from: 0, to: 10e-3 })).toThrow(
      /compensator\.kind/u,
    );
  });
});
