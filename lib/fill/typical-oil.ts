import type { OilBase } from '../fluid/oil-definition.js';

/** Surface tension against air near 25 °C [N/m]: silicone 0.0208 to 0.0213, petroleum 0.028 to 0.032; from memory. */
export const typicalSurfaceTension: Readonly<Record<OilBase, number>> = { silicone: 0.021, petroleum: 0.03 };

/** Diffusion coefficient of air in oil near 25 °C [m²/s]: an order of magnitude, from memory. */
export const typicalAirDiffusivity = 2e-9;
