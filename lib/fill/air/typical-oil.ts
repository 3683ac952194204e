import type { OilBase } from '../../fluid/oil/oil-definition.js';

/**
 * Surface tension against air near 25 °C [N/m]: silicone 0.0208 to 0.0213, petroleum 0.028 to 0.032; from memory.
 *
 * @public
 */
export const typicalSurfaceTension: Readonly<Record<OilBase, number>> = { silicone: 0.021, petroleum: 0.03 };

/**
 * Diffusion coefficient of air in oil near 25 °C [m²/s]: an order of magnitude, from memory.
 *
 * @public
 */
export const typicalAirDiffusivity = 2e-9;

/**
 * Isothermal bulk modulus of mineral hydraulic oil near 30 °C and low pressure [Pa], 1.4e9 to 1.8e9; from memory.
 *
 * @public
 */
export const typicalPetroleumBulkModulus = 1.5e9;

/**
 * Volume of air that a volume of silicone dissolves near 25 °C: data sheets of industrial fluids give 0.168 to 0.190; from memory.
 *
 * @public
 */
export const typicalSiliconeAirSolubility = 0.179;
