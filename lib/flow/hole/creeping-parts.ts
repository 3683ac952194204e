/** Poiseuille's tube, `Δp d / (μ V)` per length over diameter. */
export const creepingTube = 32;

/**
 * Creeping loss of the two ends, `Δp d / (μ V)`: Sampson's orifice, of which the tube between the ends takes 1 % (Dagan,
 * Weinbaum & Pfeffer, J. Fluid Mech. 115 (1982) 505; the numerical reference gives 0.5 to 1.5 %).
 */
export const creepingEnds = 0.991 * 6 * Math.PI;

/** Creeping loss of one end that opens with a mouth of another diameter: half of Sampson's orifice, on the speed at `diameter`. */
export function creepingEnd(diameter: number, mouth: number): number {
  return (creepingEnds / 2) * (diameter / mouth) ** 3;
}

/**
 * What the missing pressure at the face behind gives less where a mouth is wide, both directions taken alike: slow oil knows no
 * direction but at this face, and half of the effect is its mean.
 */
export function creepingMouth(areaRatio: number, creepingShare: number): number {
  return -2.4 * areaRatio * (1 - creepingShare);
}

/** Creeping loss of a cone, `Δp d/(μ V)` on its narrow end: Poiseuille's tube integrated along it, times what its slope costs more. */
export function creepingCone(diameter: number, wide: number, length: number, slopeLoss: number): number {
  const q = diameter / wide;
  return ((creepingTube * length * (q + q * q + q ** 3)) / (3 * diameter)) * (1 + slopeLoss);
}
