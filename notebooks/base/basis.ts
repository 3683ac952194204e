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

/** What every force on a page takes for granted. */
export const forceAssumptions: readonly string[] = [
  'The oil is free of air, as warm as stated throughout, and flows steadily; a fast bump adds inertia of the oil that is left out.',
  'Holes are straight with sharp edges; a chamfer or a worn edge lowers the force by a few percent.',
  'Forces on the curves are the damping of the oil alone; gas and seal friction come on top.',
];

/** The usual cautions of work on oil-filled shocks. */
export const workCautions: readonly string[] = [
  'Wear eye protection when you open or close a shock: oil may be under pressure, and springs are under load. Keep silicone oil off floors, brakes and skin, away from heat, and out of drains. The maker’s instructions and local rules come first.',
];
