import type { LeftOutInertia } from '../../lib/motion/shock/oil-inertia.js';

/** `12 g`: what the oil in the holes weighs to the shaft that has to speed it up. */
export const oilAtTheShaft = ({ apparentMass }: Pick<LeftOutInertia, 'apparentMass'>): string =>
  `${Number((1e3 * apparentMass).toPrecision(2))} g`;
