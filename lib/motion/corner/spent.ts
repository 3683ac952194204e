import { standardGravity } from '../../base/constants.js';
import type { Cushion } from './contact.js';
import { type BoundCorner, unknown } from './corner-equation.js';

/** Part of the energy of the spring that oil and bubbles under pressure may hold besides: a margin, no bound. With it the peaks of 469 random corners were those of landings followed to their end. */
const besides = 0.02;

/**
 * Whether a corner on flat ground has too little energy left to press its shaft in as far as it was. Nothing gives it energy: motion, height, tyre and spring
 * can only turn into each other and into heat. What the shaft would need at least is that of the spring, of the gas at the pressure of now, which can only
 * rise on the way in, and of the body as low as it then stands on the tyre at rest.
 *
 * @param tyreAtRest - how far the tyre is pressed at rest [m]
 * @returns asked with a state and the largest travel so far [m]; false where a cavity is open or the shaft is beyond full extension, since both hold energy too
 */
export function spent(
  { shock, corner, modes }: BoundCorner,
  tyreAtRest: number,
): (state: Float64Array, largest: number) => boolean {
  const { sprungMass, wheelMass, motionRatio, springRate, springPreload, tyre } = corner;
  const weight = sprungMass * standardGravity;
  const wheelWeight = wheelMass * standardGravity;
  const lowest = pressed(tyre, tyreAtRest) - (weight + wheelWeight) * tyreAtRest;
  return (state, largest) => {
    const [body, wheel] = [state[unknown.body] as number, state[unknown.wheel] as number];
    const travel = motionRatio * (wheel - body);
    if (modes.oil.isOpen || travel < 0 || travel >= largest) return false;
    const left =
      (sprungMass / 2) * (state[unknown.bodySpeed] as number) ** 2 +
      (wheelMass / 2) * (state[unknown.wheelSpeed] as number) ** 2 +
      weight * body +
      wheelWeight * wheel +
      pressed(tyre, Math.max(0, -wheel));
    const push = shock.shaftArea * (shock.gas.pressure(shock.shaftArea * travel) - shock.ambientPressure);
    const inward = largest - travel;
    const spring = springRate * inward * ((largest + travel) / 2 + springPreload);
    const needed = lowest - (weight * largest) / motionRatio + spring + push * inward;
    return left + besides * (springRate / 2) * largest ** 2 < needed;
  };
}

/** Energy of a tyre pressed so far. */
function pressed({ stiffness, progression = 0 }: Cushion, depth: number): number {
  return (stiffness / 2 + (progression / 4) * depth * depth) * depth * depth;
}
