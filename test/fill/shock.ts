import type { ShockChamber } from '../../lib/fill/chamber/chamber.js';

/** A shock of our own invention: bore 12, shaft 3, stroke 28 mm, silicone of 350 mm²/s. */
export const chamber: ShockChamber = {
  bore: 12e-3,
  shaftDiameter: 3e-3,
  stroke: 28e-3,
  length: 38e-3,
  capVolume: 0.6e-6,
  solidVolume: 0.27e-6,
  shaftInside: 0,
};

export const atmosphere = 101_325;

/** Cap closed at 20 °C and 1 atm, without bubbles. */
export const closedAt = (position: number) => ({
  position,
  temperature: 293.15,
  ambientPressure: atmosphere,
  freeAir: 0,
});

export const fluid = { kinematicViscosity: 350e-6, density: 970 };

/** Cross-section of the 3 mm shaft [m²], π/4 · 9 mm². */
export const shaftArea = 7.068_583_5e-6;
