import type { ChamberPressures } from './chambers.js';
import type { MovingShock, Passage } from './moving-shock.js';

/**
 * Force of oil and gas on the shaft without rim and seals [N], `A_m p₁ − (A_m − A_s) p₂ − A_s p_a − J`, `p₁` on the blind side.
 * The recoil `J` has the sign of the flow: flow and speed differ while a cavity refills.
 */
export function pressureForce(
  shock: MovingShock,
  sense: 1 | -1,
  { near, far }: ChamberPressures,
  recoil: number,
): number {
  const { pistonArea, shaftArea, ambientPressure } = shock;
  const shaftSide = sense === 1 ? far : near;
  return pistonArea * sense * (near - far) + shaftArea * (shaftSide - ambientPressure) - recoil;
}

/** Slopes of what passes the piston over the pressure drop. */
export interface PassageSlopes {
  flow: number;
  recoil: number;
}

/** Filled and read within one call and never handed out. */
const here: Passage = { flow: 0, recoil: 0 };
const above: Passage = { flow: 0, recoil: 0 };

/** Slopes of flow and recoil by differences. */
export function writePassageSlopes(shock: MovingShock, pressureDrop: number, slopes: PassageSlopes): void {
  const step = 1e-6 * Math.max(Math.abs(pressureDrop), 100);
  shock.passage(pressureDrop, here);
  shock.passage(pressureDrop + step, above);
  slopes.flow = (above.flow - here.flow) / step;
  slopes.recoil = (above.recoil - here.recoil) / step;
}
