import { annularGapDrag, gapCircumference, gapHeight } from '../flow/gap/annular-gap.js';
import type { HoleLaw } from '../flow/hole/hole-law.js';
import { requireLaw } from '../flow/hole/hole-law.js';
import { sharpHoleLaw } from '../flow/hole/sharp-hole.js';
import type { PistonFlow } from '../flow/piston/parallel-flow.js';
import { bindPistonFlow } from '../flow/piston/piston-flow.js';
import { type FluidState, requireFluidState } from '../fluid/oil/fluid-state.js';
import { blindShare } from '../gas/gas.js';
import { bindGas, type GasState } from '../gas/gas-state.js';
import { type Damper, requireDamper, shaftArea } from './damper.js';

/**
 * A damper filled with one fluid, ready to compute many forces.
 *
 * @public
 */
export interface DamperModel {
  readonly damper: Damper;
  readonly fluid: FluidState;
  readonly pistonFlow: PistonFlow;
  /** The gas at the temperature of the fluid. */
  readonly gas: GasState;
  /** Area of the piston out to the middle of its gap, `A_m` [m²]. */
  readonly pistonArea: number;
  /** Cross-section of the shaft, `A_s` [m²]. */
  readonly shaftArea: number;
  /** Cross-section of the bore [m²]. */
  readonly boreArea: number;
  /**
   * Area with which the piston displaces oil [m²]: `A_m` less the part of the shaft whose room the gas on the blind side makes. With the gas on one side the
   * pressure drop acts on it too.
   */
  readonly dampingArea: number;
  /** That part: 1 with the gas on the blind side, 0 on the shaft side, one half mixed through. */
  readonly blindShare: number;
  /** Viscous drag of the piston rim per speed, of the oil at rest [N·s/m]. */
  readonly rimDrag: number;
}

/**
 * Binds a damper to a fluid: checks both, then {@link bindDamper}.
 *
 * The flow through piston and gap is `(A_m − f A_s) v`, with `A_m` the area to the middle of the gap: the oil dragged along by the moving bore is exactly what
 * `A_m` adds to the piston area. `f` is the part of the gas on the blind side.
 *
 * @param damper - sizes above 0 m that fit into each other, gas and seal in their ranges
 * @param fluid - density 300 to 3000 kg/m³, kinematic viscosity above 0 to 1 m²/s; the temperature, where it has one, is that of the gas too
 * @param law - law of the straight sharp holes; {@link sharpHoleLaw} by default
 * @throws InputError for an input outside its range
 * @see the closed-cylinder limit agrees with Rao, Mechanical Vibrations, SI ed. 2017, Example 1.16, Eq. (E.11)
 * @example
 * ```ts
 * // A piston without holes: all oil passes the rim, 0.25 mm wide, and the damping is known by hand.
 * const oil = { density: 970, kinematicViscosity: 350e-6 };
 * const shock = {
 *   bore: 0.012,
 *   shaftDiameter: 0.003,
 *   stroke: 0.028,
 *   piston: { diameter: 0.0115, thickness: 0.0025, holes: [], eccentricity: 0 },
 *   gas: sealedGas({ volume: 1e-6, polytropicExponent: 1.4 }),
 *   seal: { kineticForce: 0, breakawayForce: 0 },
 * };
 * const model = damperModel(shock, oil);
 * creepingDampingCoefficient(model); // 181.7: A²/G + π μ D L/h, A = π/8 (12² + 11.5²) − π/4 · 3² mm², G = π D h³/(12 μ L), by hand
 * ```
 * @public
 */
export function damperModel(damper: Damper, fluid: FluidState, law: HoleLaw = sharpHoleLaw): DamperModel {
  requireLaw(law);
  requireDamper(damper);
  requireFluidState(fluid);
  return bindDamper(damper, fluid, law);
}

/**
 * {@link damperModel} of a damper and a fluid that were checked before, or are slightly off one that was: what many temperatures, oils or sizes of one
 * shock cost.
 *
 * @param damper - as `damperModel` accepts it
 * @param fluid - as `damperModel` accepts it
 * @param law - law of the straight sharp holes
 * @throws InputError where a hole or the gap has no size left
 * @example
 * ```ts
 * // model: of the example of damperModel
 * const thicker = bindDamper(shock, { ...oil, kinematicViscosity: 700e-6 });
 * creepingDampingCoefficient(thicker); // 363.5: twice the viscosity, twice the damping
 * ```
 * @public
 */
export function bindDamper(damper: Damper, fluid: FluidState, law: HoleLaw = sharpHoleLaw): DamperModel {
  return damperAround(damper, fluid, bindPistonFlow(damper.piston, damper.bore, fluid, law));
}

/** {@link bindDamper} round a piston that is bound to its bore and the fluid already. */
export function damperAround(damper: Damper, fluid: FluidState, pistonFlow: PistonFlow): DamperModel {
  const { piston, bore, gas } = damper;
  const { gap } = pistonFlow;
  const pistonArea =
    (Math.PI / 4) * piston.diameter * piston.diameter + (gapCircumference(gap) * gapHeight(gap)) / 2;
  const rod = shaftArea(damper);
  const share = blindShare(gas.layout);
  return {
    damper,
    fluid,
    pistonFlow,
    gas: gasInFluid(damper, fluid),
    pistonArea,
    shaftArea: rod,
    boreArea: (Math.PI / 4) * bore * bore,
    dampingArea: pistonArea - share * rod,
    blindShare: share,
    rimDrag: annularGapDrag(gap, fluid),
  };
}

/** The gas of a damper at the temperature of its fluid, squeezed by oil that has grown since closing. */
export function gasInFluid(
  { gas }: Pick<Damper, 'gas'>,
  { temperature, density }: Pick<FluidState, 'temperature' | 'density'>,
): GasState {
  const { closing, polytropicExponent } = gas;
  const expansion = closing.oilDensity === undefined ? 1 : closing.oilDensity / density;
  return bindGas(gas, temperature ?? closing.temperature, expansion, polytropicExponent);
}
