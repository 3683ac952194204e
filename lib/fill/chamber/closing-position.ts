import { requireWithin } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { optional, requireShape, type Shape } from '../../base/shape.js';
import type { Compensator } from '../../gas/compensator.js';
import { compensatorShape } from '../../gas/compensator.js';
import { totalGivenUp } from '../../gas/gas-state.js';
import { bracketedRoot } from '../../numeric/root-finding.js';
import type { ShockChamber } from './chamber.js';
import { shockChamberShape } from './chamber.js';
import { type ClosedShock, type Closing, closeShock } from './closed-shock.js';
import { conditionAtClosing, gasOf, lockPosition } from './pressure-inside.js';
import { staticForce } from './static-force.js';

/**
 * A force that the shaft shall have at a position.
 *
 * @public
 */
export interface WantedStaticForce {
  /** Force that pushes the shaft out [N]; negative sucks it in. */
  readonly force: number;
  /** Where [m], 0 to the stroke. */
  readonly position: number;
}

/** Form of {@link WantedStaticForce}. */
export const wantedStaticForceShape: Shape = { force: 'N', position: 'm' };

/**
 * Position at which to close the cap [m] so that the resting shaft has a wanted force at a position.
 *
 * @param chamber - sizes that fit into each other
 * @param compensator - one that makes room
 * @param closing - temperature [K], pressure outside [Pa] and free air [m³] at closing
 * @param wanted - force [N] at a position [m]
 * @throws InputError for an input outside its range, or a force that no closing position gives; it names the forces within reach
 * @public
 */
export function closingPositionForForce(
  chamber: ShockChamber,
  compensator: Compensator,
  closing: Omit<Closing, 'position'>,
  wanted: WantedStaticForce,
): number {
  requireShape(
    { chamber, compensator, closing, wanted },
    {
      chamber: shockChamberShape,
      compensator: compensatorShape,
      closing: {
        temperature: 'K',
        ambientPressure: 'Pa',
        freeAir: 'm³',
        dissolvedAir: optional('m³ at the pressure outside'),
        oilDensity: optional('kg/m³'),
        polytropicExponent: optional(''),
        airReleasePressure: optional('Pa'),
      },
      wanted: wantedStaticForceShape,
    },
  );
  requireWithin(wanted.position, 0, chamber.stroke, 'wanted.position', 'm');
  const closed = (position: number) => closeShock(chamber, compensator, { ...closing, position });
  // The lock cannot be met on the way: it is the force that is set, and the volume that follows.
  const excess = (position: number): number => {
    const shock = closed(position);
    const relative = wanted.force / shock.shaftArea / closing.ambientPressure;
    if (!(relative > -1)) return Number.POSITIVE_INFINITY;
    const release = totalGivenUp(gasOf(shock, conditionAtClosing(shock)), Math.log1p(relative));
    return shock.shaftArea * (wanted.position - position) - release;
  };
  const [atExtension, atCompression] = [excess(0), excess(chamber.stroke)];
  // The forces at both ends are within reach, whatever their last digit.
  const slack = 1e-12 * closed(0).shaftArea * chamber.stroke;
  if (Math.abs(atExtension) <= slack) return 0;
  if (Math.abs(atCompression) <= slack) return chamber.stroke;
  if (!(atExtension > 0 && atCompression < 0)) {
    throw new InputError({
      field: 'wanted.force',
      value: wanted.force,
      unit: 'N',
      accepted: forcesWithinReach(closed(chamber.stroke), closed(0), wanted.position),
    });
  }
  // Shifted by a stroke: the search works to a part of its root, and a root near 0 would have no such part.
  const { stroke } = chamber;
  const shifted = (x: number): number => excess(Math.min(Math.max(x - stroke, 0), stroke));
  return bracketedRoot(shifted, stroke, 2 * stroke, 'closing position').root - stroke;
}

/** Every closing position between the ends gives a force between theirs. */
function forcesWithinReach(lowest: ClosedShock, highest: ClosedShock, position: number): string {
  const least = staticForce(lowest, position).toFixed(3);
  if (lockPosition(highest) <= position) return `${least} or more`;
  return `${least} to ${staticForce(highest, position).toFixed(3)}`;
}

/**
 * The quietest way to close a shock for a working stroke.
 *
 * @public
 */
export interface QuietClosing {
  /** Position at which to close the cap [m]. */
  readonly position: number;
  /** Largest force of the resting shaft in either direction over the working stroke [N]. */
  readonly largestForce: number;
}

/**
 * Closing position that makes the largest static force over a working stroke as small as it can be: the shaft sucks in at one end as
 * hard as it pushes out at the other, unless the gas is too small for that. The shock is dead where that force is below the friction of its seals.
 *
 * @param chamber - sizes that fit into each other
 * @param compensator - one that makes room for the working stroke
 * @param closing - temperature [K], pressure outside [Pa] and free air [m³] at closing
 * @param workingStroke - from where [m], 0 or more, to where [m], above `from`, up to the stroke
 * @throws InputError for an input outside its range, or nothing that makes room
 * @public
 */
export function quietClosing(
  chamber: ShockChamber,
  compensator: Compensator,
  closing: Omit<Closing, 'position'>,
  workingStroke: { readonly from: number; readonly to: number },
): QuietClosing {
  requireShape(
    { chamber, compensator, closing, workingStroke },
    {
      chamber: shockChamberShape,
      compensator: compensatorShape,
      closing: {
        temperature: 'K',
        ambientPressure: 'Pa',
        freeAir: 'm³',
        dissolvedAir: optional('m³ at the pressure outside'),
        oilDensity: optional('kg/m³'),
        polytropicExponent: optional(''),
        airReleasePressure: optional('Pa'),
      },
      workingStroke: { from: '', to: '' },
    },
  );
  const { from, to } = workingStroke;
  requireWithin(to, 0, chamber.stroke, 'workingStroke.to', 'm');
  requireWithin(from, 0, to, 'workingStroke.from', 'm');
  const closed = (position: number) => closeShock(chamber, compensator, { ...closing, position });
  if (closed(from).gasVolume === 0) {
    throw new InputError({
      field: 'compensator.kind',
      value: compensator.kind,
      accepted: 'one that makes room',
    });
  }
  // The earliest closing that leaves a thousandth of the gas at the end of the stroke: earlier ones lock, or all but do.
  const last = closed(to);
  const earliest = Math.max(from, to - (0.999 * last.gasVolume) / last.shaftArea);
  const push = (position: number): number => staticForce(closed(position), to);
  const sum = (position: number): number => push(position) + staticForce(closed(position), from);
  // A vented bladder may be full before it pushes as hard as it sucks.
  const position = sum(earliest) <= 0 ? earliest : bracketedRoot(sum, earliest, to, 'quiet closing').root;
  return { position, largestForce: Math.max(push(position), -staticForce(closed(position), from)) };
}
