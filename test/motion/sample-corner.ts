import type { Corner } from '../../lib/motion/corner/corner.js';

/** The corner of the reference trajectories. Invented. */
export const sampleCorner: Corner = {
  sprungMass: 0.34,
  wheelMass: 0.09,
  motionRatio: 0.72,
  springRate: 600,
  springPreload: 0.003,
  tyre: { stiffness: 4000, damping: 2 },
  bumpStop: { from: 0.021, stiffness: 60_000, damping: 5 },
  droopStop: { stiffness: 60_000, damping: 5 },
};
