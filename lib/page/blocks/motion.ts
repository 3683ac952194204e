import { listOf, oneOf, optional, type Shape, someText } from '../../base/shape.js';

/**
 * Sizes of a shock that is drawn to scale, from its cap to the end of its shaft. Lengths [m], volumes [m³].
 *
 * @public
 */
export interface DrawnShock {
  readonly bore: number;
  readonly shaftDiameter: number;
  readonly stroke: number;
  readonly pistonThickness: number;
  /** Diameters of the holes that a cut through the piston shows. */
  readonly holes: readonly number[];
  /** Where the gas is; `mixed` through the oil has no room of its own. */
  readonly gasAt: 'blind-side' | 'shaft-side' | 'mixed';
  /** Room of the gas with the shaft fully out; 0 where mixed. */
  readonly gasVolume: number;
  /** Oil, with gas that is mixed into it. */
  readonly oilVolume: number;
  /** Room between piston and seal with the shaft fully out [m]. */
  readonly clearance: number;
  /** Travel at which a bump stop is touched [m], where there is one. */
  readonly bumpStop?: number;
}

/** Form of {@link DrawnShock}. */
const drawnShockShape: Shape = {
  bore: 'm',
  shaftDiameter: 'm',
  stroke: 'm',
  pistonThickness: 'm',
  holes: listOf('m'),
  gasAt: oneOf('blind-side', 'shaft-side', 'mixed'),
  gasVolume: 'm³',
  oilVolume: 'm³',
  clearance: 'm',
  bumpStop: optional('m'),
};

/**
 * A shock at one time.
 *
 * @public
 */
export interface MotionFrame {
  /** [s] */
  readonly time: number;
  /** Shaft travel [m], speed [m/s, going in is positive], and force [N, out is positive]. */
  readonly travel: number;
  readonly speed: number;
  readonly force: number;
  /** Absolute pressures [Pa]. */
  readonly blindPressure: number;
  readonly shaftPressure: number;
  /** [m³] */
  readonly cavity: number;
}

/** Form of {@link MotionFrame}. */
const motionFrameShape: Shape = {
  time: 's',
  travel: 'm',
  speed: 'm/s',
  force: 'N',
  blindPressure: 'Pa',
  shaftPressure: 'Pa',
  cavity: 'm³',
};

/**
 * A shock at work, drawn to scale: played slowly in a live page, a row of stills on paper and without scripts.
 *
 * @public
 */
export interface MotionBlock {
  readonly kind: 'motion';
  /** Anchor: small letters, digits and hyphens; differs from all other ids of the page. */
  readonly id: string;
  readonly title: string;
  /** One sentence with the key numbers. */
  readonly alt: string;
  readonly shock: DrawnShock;
  /** At equal times, 2 or more. */
  readonly frames: readonly MotionFrame[];
  /** The moments that stand for the whole, each with what it shows; they may lie between the frames. */
  readonly stills: readonly { readonly frame: MotionFrame; readonly label: string }[];
}

/** Form of {@link MotionBlock}. */
export const motionBlockShape: Shape = {
  kind: oneOf('motion'),
  id: someText,
  title: someText,
  alt: someText,
  shock: drawnShockShape,
  frames: listOf(motionFrameShape),
  stills: listOf({ frame: motionFrameShape, label: someText }),
};
