import type { ToleranceName, Tolerances } from './toleranced-build.js';
import { type Deviation, deviationAt } from './uncertain.js';

/** By how much each size is off. */
export type Offsets = Readonly<Record<ToleranceName, number>>;

/** All sizes as stated. */
export const noOffsets: Offsets = {
  holeDiameter: 0,
  holeTaper: 0,
  thickness: 0,
  bore: 0,
  gap: 0,
  viscosity: 0,
  temperature: 0,
  gasVolume: 0,
};

/** Where the probability of a deviation stands in a point of the unit cube. */
interface Axis {
  readonly place: number;
  /** Of an even deviation; 0 where there is none. */
  readonly halfWidth: number;
  readonly bell: Deviation | undefined;
}

const noAxis: Axis = { place: 0, halfWidth: 0, bell: undefined };

/** Reads offsets off points of the unit cube, whose axes are the names given; one record serves all builds. */
export function offsetReader(
  tolerances: Tolerances,
  names: readonly ToleranceName[],
): (point: Float64Array) => Offsets {
  const axis = (name: ToleranceName): Axis => {
    const place = names.indexOf(name);
    const deviation = tolerances[name];
    if (place === -1 || deviation === undefined) return noAxis;
    return deviation.kind === 'uniform'
      ? { place, halfWidth: deviation.halfWidth, bell: undefined }
      : { place, halfWidth: 0, bell: deviation };
  };
  const axes = {
    holeDiameter: axis('holeDiameter'),
    holeTaper: axis('holeTaper'),
    thickness: axis('thickness'),
    bore: axis('bore'),
    gap: axis('gap'),
    viscosity: axis('viscosity'),
    temperature: axis('temperature'),
    gasVolume: axis('gasVolume'),
  };
  const off: { -readonly [Name in ToleranceName]: number } = { ...noOffsets };
  // `deviationAt`, with its commonest case at hand.
  const read = ({ place, halfWidth, bell }: Axis, point: Float64Array): number => {
    const probability = point[place] ?? 0;
    return bell === undefined ? halfWidth * (2 * probability - 1) : deviationAt(bell, probability);
  };
  // By name, since a name that is looked up takes as long as the hole.
  return (point) => {
    off.holeDiameter = read(axes.holeDiameter, point);
    off.holeTaper = read(axes.holeTaper, point);
    off.thickness = read(axes.thickness, point);
    off.bore = read(axes.bore, point);
    off.gap = read(axes.gap, point);
    off.viscosity = read(axes.viscosity, point);
    off.temperature = read(axes.temperature, point);
    off.gasVolume = read(axes.gasVolume, point);
    return off;
  };
}
