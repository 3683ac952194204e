import type { ToleranceName, Tolerances } from './tolerances.js';
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
  readonly deviation: Deviation;
  readonly place: number;
}

const noAxis: Axis = { deviation: { kind: 'exact' }, place: 0 };

/** Reads offsets off points of the unit cube, whose axes are the names given; one record serves all builds. */
export function offsetReader(
  tolerances: Tolerances,
  names: readonly ToleranceName[],
): (point: Float64Array) => Offsets {
  const axis = (name: ToleranceName): Axis => {
    const place = names.indexOf(name);
    const deviation = tolerances[name];
    return place === -1 || deviation === undefined ? noAxis : { deviation, place };
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
  const read = ({ deviation, place }: Axis, point: Float64Array): number =>
    deviationAt(deviation, point[place] ?? 0);
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
