import { requireFinite } from '../base/checks.js';
import type { ValvePath } from '../flow/valve/valve-path.js';
import { requireModel } from './damper.js';
import type { DamperModel } from './damper-model.js';
import { recoilOfHoles } from './jet-recoil.js';

/**
 * What passes the piston at a pressure drop.
 *
 * @public
 */
export interface PistonPassage {
  /** Pressure on the blind side less that on the shaft side [Pa]. */
  readonly pressureDrop: number;
  /** Mean speed in the open holes of each path [m/s], with the sign of the flow. */
  readonly holeSpeeds: readonly number[];
  /** Flow through piston and gap [m³/s], from the blind to the shaft side. */
  readonly flow: number;
}

/**
 * What passes the piston at a pressure drop, whatever the shaft does: the flow into a cavity.
 *
 * @param model - from `damperModel`
 * @param pressureDrop - [Pa], either sign
 * @example
 * ```ts
 * // model: of the example of damperModel
 * passageAtDrop(model, 1e5).flow; // 5.663e-6: π D h³ Δp/(12 μ L) with D = 11.75 mm, h = 0.25 mm, by hand
 * ```
 * @public
 */
export function passageAtDrop(model: DamperModel, pressureDrop: number): PistonPassage {
  requireModel(model);
  requireFinite(pressureDrop, 'pressureDrop', 'Pa');
  return passageAt(model, pressureDrop);
}

/** {@link passageAtDrop} of what was checked before, with the valves that a higher pressure has lifted. */
export function passageAt(
  model: DamperModel,
  pressureDrop: number,
  lifted: readonly ValvePath[] = [],
): PistonPassage {
  const { paths, valves, gapFlow } = model.pistonFlow;
  const holeSpeeds = new Array<number>(paths.length);
  let flow = gapFlow(pressureDrop);
  let index = 0;
  for (const { area, resistance } of paths) {
    const speed = resistance.meanSpeed(pressureDrop);
    holeSpeeds[index++] = speed;
    flow += area * speed;
  }
  for (const valve of valves) flow += (lifted.includes(valve) ? valve.fallingFlow : valve.flow)(pressureDrop);
  return { pressureDrop, holeSpeeds, flow };
}

/**
 * Force of whole oil on the piston at a shaft speed, its gas on one side [N], with the sign of the speed: pressure drop on the damping area, less the
 * recoil of the jets, plus rim drag. It knows no cavitation: see `cavitationOnset` for where that begins. An emulsion adds a little that depends on its
 * gas; `damperForce` holds it.
 *
 * @param model - from `damperModel`
 * @param speed - shaft speed [m/s], either sign
 * @example
 * ```ts
 * // model: of the example of damperModel
 * oilForce(model, 0.02); // 3.635: 181.7 N·s/m times 20 mm/s
 * ```
 * @public
 */
export function oilForce(model: DamperModel, speed: number): number {
  requireModel(model);
  requireFinite(speed, 'speed', 'm/s');
  return forceOfOil(model, speed);
}

/** {@link oilForce} of what was checked before. */
export function forceOfOil(model: DamperModel, speed: number): number {
  const { holeSpeeds, pressureDrop } = model.pistonFlow.pressureDrop(model.dampingArea * speed);
  return (
    model.dampingArea * pressureDrop -
    recoilOfHoles(model, holeSpeeds, model.dampingArea * speed) +
    rimForce(model, speed)
  );
}

/** Viscous drag of the piston rim [N], with the sign of the speed. */
export function rimForce({ pistonFlow, rimDrag }: DamperModel, speed: number): number {
  return pistonFlow.dragViscosityRatio(speed) * rimDrag * speed;
}
