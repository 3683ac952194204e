import { describe, expect, test } from 'vitest';
import { chamberVolume, fluidRoom, shaftVolumeInside } from '../../lib/fill/chamber/chamber.js';
import { closeShock } from '../../lib/fill/chamber/closed-shock.js';
import { oilNeed, oilOutOnClosing } from '../../lib/fill/chamber/oil-out.js';
import { atmosphere, chamber, closedAt } from './shock.js';

// Hand: π/4 · 12² · 38 = 4297.7 mm³; with the cap 4897.7; less 270 of piston 4627.7; shaft 7.0686 · 28 = 197.92 mm³.

describe('volumes', () => {
  test('chamber, shaft and room of a 12 mm body', () => {
    expect(chamberVolume(chamber)).toBeCloseTo(4.897_7e-6, 10);
    expect(shaftVolumeInside(chamber, 28e-3)).toBeCloseTo(197.92e-9, 11);
    expect(fluidRoom(chamber, 0)).toBeCloseTo(4.627_7e-6, 10);
    expect(fluidRoom(chamber, 28e-3)).toBeCloseTo(4.429_8e-6, 10);
  });

  test('droop spacers keep shaft inside at full extension', () => {
    const spaced = { ...chamber, shaftInside: 4e-3 };
    expect(fluidRoom(chamber, 0) - fluidRoom(spaced, 0)).toBeCloseTo(4 * 7.068_58e-9, 13);
  });

  test('oil is what compensator and bubbles leave', () => {
    const shock = closeShock(
      chamber,
      { kind: 'bladder', volume: 0.4e-6, stiffness: 5e10, vented: false },
      { ...closedAt(14e-3), freeAir: 0.02e-6 },
    );
    // 4627.7 − 7.0686 · 14 − 400 − 20 mm³
    expect(shock.oilVolume).toBeCloseTo(4.108_7e-6, 10);
    expect(shock.gasVolume).toBeCloseTo(0.42e-6, 15);
  });

  test('oil that comes out: filled to the rim at full extension, closed half way in', () => {
    const bladder = { kind: 'bladder', volume: 0.4e-6, stiffness: 0, vented: false } as const;
    const { poured, out, kept } = oilOutOnClosing(chamber, bladder, closedAt(14e-3), 0);
    expect(poured).toBeCloseTo(4.027_7e-6, 10);
    expect(kept).toBeCloseTo(4.128_7e-6, 10);
    // The hollow of the cap takes 0.2 ml beside the bladder, the shaft gives back 0.099 ml: it must be topped up.
    expect(out).toBeCloseTo(-0.101e-6, 9);
  });

  test('oil of a season, with bottles', () => {
    const need = oilNeed(4e-6, { shocks: 4, rebuilds: 10, spilledFraction: 0.5, bottleVolume: 60e-6 });
    expect(need.perShock).toBeCloseTo(6e-6, 15);
    expect(need.perBuild).toBeCloseTo(24e-6, 15);
    expect(need.perSeason).toBeCloseTo(240e-6, 15);
    expect(need.bottles).toBe(4);
    expect(oilNeed(4e-6, { shocks: 1, rebuilds: 1, spilledFraction: 0 })).not.toHaveProperty('bottles');
  });

  test('bad sizes are refused by name', () => {
    expect(() => fluidRoom({ ...chamber, shaftDiameter: 12e-3 }, 0)).toThrow(/chamber\.shaftDiameter/u);
    expect(() => fluidRoom({ ...chamber, length: 27e-3 }, 0)).toThrow(/chamber\.length/u);
    expect(() => fluidRoom({ ...chamber, solidVolume: 5e-6 }, 0)).toThrow(/chamber\.solidVolume/u);
    expect(() => fluidRoom({ ...chamber, bore: Number.NaN }, 0)).toThrow(/chamber\.bore/u);
    expect(() => fluidRoom({ ...chamber, capVolume: -1e-9 }, 0)).toThrow(/chamber\.capVolume/u);
    expect(() => fluidRoom(chamber, 29e-3)).toThrow(/position must be 0 to 0\.028 m/u);
  });

  test('a compensator that leaves no oil is refused', () => {
    expect(() => closeShock(chamber, { kind: 'air-pocket', volume: 5e-6 }, closedAt(0))).toThrow(
      /compensator/u,
    );
    expect(() => closeShock(chamber, { kind: 'emulsion', gasFraction: 1 }, closedAt(0))).toThrow(
      /gasFraction/u,
    );
    const slack = { kind: 'bladder', volume: 1e-7, stiffness: 0, vented: true } as const;
    expect(() => closeShock(chamber, slack, closedAt(0))).toThrow(/compensator\.stiffness/u);
    const cold = { ...closedAt(0), temperature: 0 };
    expect(() => closeShock(chamber, { kind: 'none' }, cold)).toThrow(/closing\.temperature/u);
    const vacuum = { ...closedAt(0), ambientPressure: atmosphere * 0 };
    expect(() => closeShock(chamber, { kind: 'none' }, vacuum)).toThrow(/closing\.ambientPressure/u);
  });
});
