import { workCautions } from './basis.js';

/** Cautions of filling and building. */
export const benchCautions: readonly string[] = [
  ...workCautions,
  'Point the cap away from your face as you close and open it. Take springs off and put them on in a guarded press. Let hot oil cool before you open a shock. Solvents and threadlocker: gloves, fresh air, no flame, and what their labels say.',
];

/** Sources of the laws of filling. */
export const fillSources: readonly string[] = [
  'Çengel & Boles, Thermodynamics, sec. 4-1: polytropic change of an ideal gas (from memory).',
  'Clift, Grace & Weber, Bubbles, Drops, and Particles (1978): rise of bubbles after Stokes, drag after Schiller & Naumann, walls after Haberman & Sayre (from memory).',
  'de Gennes, Brochard-Wyart & Quéré, Capillarity and Wetting Phenomena (2004): pressure of a curved surface, height of a flat bubble (from memory).',
  'Dee, Ougizawa & Walsh, Polymer 33 (1992) 3462, and ASTM D1250: expansion of silicone and of petroleum oil (from memory).',
];

/** What filling takes for granted. */
export const fillAssumptions: readonly string[] = [
  'Oil, gas and body have one temperature; the body does not grow, and oil is not squeezed.',
  'The gas moves slowly and keeps its temperature; a fast stroke pushes harder at its end.',
  'Surface tension 21 mN/m (silicone) or 30 mN/m (petroleum), from memory.',
  'Bubbles are held by dirt on their surface and rise slower than clean ones, so that waits are on the long side.',
];
