import { bracketedRoot } from '../../numeric/root-finding.js';
import type { ValvePath } from '../valve/valve-path.js';
import type { FlowHistory, FlowSolver } from './parallel-flow.js';
import { openFlow, type ParallelPaths, type PistonPressureDrop } from './piston-pressure-drop.js';

/** Solves ways of which the given valves stand open and the others are shut. */
export type OpenSolver = (
  ways: ParallelPaths,
  open: readonly ValvePath[],
  flow: number,
) => PistonPressureDrop;

/** A valve that opens in one direction, after those that open before it. */
interface Opening {
  readonly valve: ValvePath;
  /** It and those before it. */
  readonly open: readonly ValvePath[];
  /** Flow through everything at its opening pressure, itself still shut [m³/s]. */
  readonly shutFlow: number;
  /** Flow through everything where the open valve's pressure is least, and the least flow on the way there. */
  readonly leastOpenFlow: number;
  readonly leastFlow: number;
}

/** No valve stands open. */
const shut: readonly ValvePath[] = [];

/** Lifts between shut and the least pressure of the open valve at which its way is looked at. */
const looks = 24;

/** Flow through everything while one valve opens from its seat, the others as at that pressure. */
function openingFlow(
  ways: ParallelPaths,
  { valve, open }: Pick<Opening, 'valve' | 'open'>,
  lift: number,
): number {
  const { drop, flow } = valve.evaluate(lift);
  return flow + openFlow(ways, open.slice(0, -1), valve.opens, drop).value;
}

/** The valves that open with a flow of one sign, in the order in which they do. */
function openings(ways: ParallelPaths, sign: number): readonly Opening[] {
  const valves = ways.valves
    .filter(({ opens }) => opens === sign)
    .sort((a, b) => a.openingPressure - b.openingPressure);
  return valves.map((valve, index) => {
    const open = valves.slice(0, index + 1);
    const { openingPressure, leastOpenLift } = valve;
    const shutFlow =
      openingPressure === 0 ? 0 : openFlow(ways, open.slice(0, -1), sign, openingPressure).value;
    let leastOpenFlow = shutFlow;
    let leastFlow = shutFlow;
    for (let step = 1; leastOpenLift > 0 && step <= looks; step++) {
      leastOpenFlow = openingFlow(ways, { valve, open }, (leastOpenLift * step) / looks);
      leastFlow = Math.min(leastFlow, leastOpenFlow);
    }
    return { valve, open, shutFlow, leastOpenFlow, leastFlow };
  });
}

/** Lift at which a valve that opens from its seat, against falling pressure, lets just this flow through; the first on the way, or the last. */
function liftWhileOpening(
  ways: ParallelPaths,
  opening: Opening,
  flow: number,
  history: FlowHistory,
): number | undefined {
  const { leastOpenLift } = opening.valve;
  const excess = (lift: number) => (lift === 0 ? opening.shutFlow : openingFlow(ways, opening, lift)) - flow;
  const order = Array.from({ length: looks }, (_, index) => index);
  if (history === 'falling') order.reverse();
  for (const index of order) {
    const [from, to] = [(leastOpenLift * index) / looks, (leastOpenLift * (index + 1)) / looks];
    if (excess(from) <= 0 && excess(to) > 0) return bracketedRoot(excess, from, to, 'lift of a valve').root;
  }
  return undefined;
}

/**
 * Prepares the pressure drop at a flow where valves may open; a direction is looked at when it is first asked for.
 *
 * A valve counts as open once the flow with it shut would have opened it. Then either its pressure rises with the flow, and all ways are solved
 * together, or it is still on its way from the seat, where its pressure falls: then its lift is the unknown. With `falling` flow a valve
 * counts as open down to the least flow at which it can stay so.
 *
 * @param solve - for open valves whose pressure rises with the flow
 */
export function valvedSolver(ways: ParallelPaths, solve: OpenSolver): FlowSolver {
  let forwards: readonly Opening[] | undefined;
  let backwards: readonly Opening[] | undefined;
  const candidatesFor = (sign: number): readonly Opening[] => {
    if (sign > 0) {
      forwards ??= openings(ways, sign);
      return forwards;
    }
    backwards ??= openings(ways, sign);
    return backwards;
  };
  return (flow, history) => {
    const sign = flow < 0 ? -1 : 1;
    const target = Math.abs(flow);
    const candidates = candidatesFor(sign);
    for (let index = candidates.length - 1; index >= 0; index--) {
      const opening = candidates[index];
      if (opening === undefined) continue;
      const from = history === 'rising' ? opening.shutFlow : opening.leastFlow;
      if (target <= from) continue;
      if (target >= opening.leastOpenFlow) return solve(ways, opening.open, flow);
      const lift = liftWhileOpening(ways, opening, target, history);
      if (lift === undefined) continue;
      const { drop } = opening.valve.evaluate(lift);
      return {
        pressureDrop: sign * drop,
        holeSpeeds: ways.paths.map(({ resistance }) => resistance.meanSpeed(sign * drop)),
        iterations: looks,
        residual: sign * (openingFlow(ways, opening, lift) - target),
      };
    }
    return solve(ways, shut, flow);
  };
}
