import { developedExcessLoss, freeJetLoss, sharpOnset } from './inertial-loss.js';
import type { LaminarHole } from './laminar-hole.js';
import { creepingEnds, creepingTube } from './sharp-hole.js';

/** One part of a stepped hole. */
interface Part {
  readonly diameter: number;
  readonly length: number;
}

/**
 * A hole of two straight parts, for flow in at the first: tubes and ends of each, the step as the part of an end that the wider
 * part does not share, and by inertia the loss of the narrow part.
 */
export function steppedHole(first: Part, second: Part): LaminarHole {
  const narrow = first.diameter <= second.diameter ? first : second;
  const wide = narrow === first ? second : first;
  const q = narrow.diameter / wide.diameter;
  const end = creepingEnds / 2;
  const creepingNumber =
    end +
    end * q ** 3 +
    end * (1 - q) +
    (creepingTube * (narrow.length + wide.length * q ** 4)) / narrow.diameter;
  const leavesNarrow = narrow === second;
  return {
    diameter: narrow.diameter,
    creepingNumber,
    lengthRatio: narrow.length / narrow.diameter,
    exit: leavesNarrow ? 1 : 1 - 2 * q ** 2 * (1 - q ** 2),
    development: developedExcessLoss,
    contraction: freeJetLoss * (leavesNarrow ? 1 - q ** 2 : 1),
    onset: sharpOnset,
  };
}
