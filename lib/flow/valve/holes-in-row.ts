import { monotoneRoot } from '../../numeric/monotone-root.js';
import { evaluateHole } from '../hole/hole-law.js';
import type { HolePath } from '../hole/hole-path.js';

/** Filled and read within one call and never handed out. */
const dropAndSlope = new Float64Array(2);

/**
 * Pressure drop over the holes under one disc, and its slope, at their flow together; into the first two places.
 *
 * @param opens - sign of the flow
 */
export function holesUnderDisc(
  holes: readonly HolePath[],
  opens: 1 | -1,
): (flow: number, out: Float64Array) => void {
  const [only, ...others] = holes;
  if (only !== undefined && others.length === 0) {
    return (flow, out) => {
      evaluateHole(only.resistance, (opens * flow) / only.area, dropAndSlope);
      out[0] = opens * dropAndSlope[0]!;
      out[1] = dropAndSlope[1]! / only.area;
    };
  }
  const conductance = holes.reduce((sum, { area, resistance }) => sum + area / resistance.creepingSlope, 0);
  const through = (drop: number) => {
    let [value, slope] = [0, 0];
    for (const { area, resistance } of holes) {
      const speed = resistance.meanSpeed(opens * drop);
      value += area * opens * speed;
      slope += area / resistance.slope(speed);
    }
    return { value, slope };
  };
  return (flow, out) => {
    if (flow === 0) {
      out[0] = 0;
      out[1] = 1 / conductance;
      return;
    }
    const excess = (drop: number) => {
      const { value, slope } = through(drop);
      return { value: value - flow, slope };
    };
    const start = flow / conductance;
    const { root } = monotoneRoot(excess, start, 0, Number.POSITIVE_INFINITY, 'pressure drop under a disc');
    out[0] = root;
    out[1] = 1 / through(root).slope;
  };
}
