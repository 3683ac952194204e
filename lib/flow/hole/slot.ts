import { creepingEnds } from './creeping-parts.js';
import { straightJet } from './jet-momentum.js';
import type { LaminarHole } from './laminar-hole.js';
import { sharpLoss } from './sharp-hole.js';

/** Perimeter of an ellipse by Ramanujan's second formula, exact to 1e-4 for any we meet. */
function ellipsePerimeter(a: number, b: number): number {
  const h = ((a - b) / (a + b)) ** 2;
  return Math.PI * (a + b) * (1 + (3 * h) / (10 + Math.sqrt(4 - 3 * h)));
}

/**
 * Flow through a long slot per pressure gradient, times viscosity [m⁴]: two half tubes and a plane slit between them, less what the
 * slit's ends hold back. The last term is fitted to our own solution of the cross-section, which it meets within 0.1 %.
 */
export function slotConductance(width: number, travel: number): number {
  const stretch = travel / width;
  return width ** 4 * (Math.PI / 128 + stretch / 12 - 0.0071 * (1 - Math.exp(-3 * stretch)));
}

/**
 * A slot with round ends, as milled: two half tubes and a plane slit between them. Its ends are those of an elliptical orifice of the
 * same area and the same length over width, `Δp = 6 μ Q E / (π a b²)`, with `4 a E` the perimeter.
 *
 * @see plane and tube Poiseuille flow; Roscoe, Phil. Mag. 40 (1949) 338, and Hasimoto, J. Phys. Soc. Japan 13 (1958) 633, for
 * the orifice (from memory)
 */
export function slotHole(width: number, travel: number, thickness: number, areaRatio: number): LaminarHole {
  const area = (Math.PI / 4) * width ** 2 + width * travel;
  const diameter = (4 * area) / (Math.PI * width + 2 * travel);
  const conductance = slotConductance(width, travel);
  const stretch = (width + travel) / width;
  const b = Math.sqrt(area / (Math.PI * stretch));
  const a = b * stretch;
  const ends = (6 * ellipsePerimeter(a, b)) / (4 * a * Math.PI * a * b * b);
  return {
    ...sharpLoss(areaRatio),
    diameter,
    creepingNumber: area * diameter * (thickness / conductance + (creepingEnds / (6 * Math.PI)) * ends),
    lengthRatio: thickness / diameter,
    jet: straightJet,
  };
}
