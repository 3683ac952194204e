import { standardAtmosphere } from '../../lib/base/constants.js';
import { bubblyOil } from '../../lib/fluid/air/bubbly-viscosity.js';
import { percent } from './wording.js';

/** Sources of the laws that every force on a page rests on. */
export const forceSources: readonly string[] = [
  'Sampson, Phil. Trans. R. Soc. A 182 (1891) 449, and Dagan, Weinbaum & Pfeffer, J. Fluid Mech. 115 (1982) 505: slow flow through a short hole.',
  'Shah, J. Fluids Eng. 100 (1978) 177: flow that develops along a tube; with it and our own numerical solutions, fast flow through a short hole.',
  'Bird, Stewart & Lightfoot, Transport Phenomena, sec. 2.4: flow through the gap round the piston.',
  'Rao, Mechanical Vibrations, SI ed. 2017, Example 1.16: the closed-cylinder limit of the force balance.',
];

/** Sources of the change of an oil with temperature. */
export const oilSources: readonly string[] = [
  'ASTM D341 (Walther) and ASTM D2270: viscosity of petroleum oil against temperature.',
  'Barry, J. Appl. Phys. 17 (1946) 1020: viscosity of silicone oil against temperature.',
];

/** Five percent of bubbles at the pressure outside. */
const { viscosityRatio } = bubblyOil(
  { liquidBulkModulus: 0.85e9, airFraction: 0.05, referencePressure: standardAtmosphere },
  standardAtmosphere,
);

const steadyOil = `The viscosity is that of oil without bubbles: 5 % of air beaten in leaves it open from ${percent(1 - viscosityRatio.low)} below to ${percent(viscosityRatio.high - 1)} above. The oil is as warm as stated throughout, and flows steadily; a fast bump adds inertia of the oil that is left out.`;
const holesOfTheFile =
  'Holes are as the parts file has them, straight with sharp edges where it names no shape; a worn edge lowers the force by a few percent.';
const dampingAlone = 'Forces are the damping of the oil alone; gas and seal friction come on top.';

/** What every force on a page takes for granted. */
export const forceAssumptions: readonly string[] = [steadyOil, holesOfTheFile, dampingAlone];

/** The same where the page itself says what the holes are like. */
export const forceAssumptionsOfOtherHoles: readonly string[] = [steadyOil, dampingAlone];

/** The same where the push of the gas is part of the force. */
export const forceAssumptionsWithGas: readonly string[] = [
  steadyOil,
  holesOfTheFile,
  'Forces are those of the oil and of the gas that pushes the shaft out; seal friction comes on top.',
];

/** The usual cautions of work on oil-filled shocks. */
export const workCautions: readonly string[] = [
  'Wear eye protection when you open or close a shock: oil may be under pressure, and springs are under load. Keep silicone oil off floors, brakes and skin, away from heat, and out of drains. The maker’s instructions and local rules come first.',
];
