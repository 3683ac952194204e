import { developedExcessLoss, freeJetLoss, sharpOnset } from './inertial-loss.js';
import type { LaminarHole } from './laminar-hole.js';
import { creepingEnds, creepingTube } from './sharp-hole.js';

/** One part of a stepped hole. */
interface Part {
  readonly diameter: number;
  readonly length: number;
}

/** Length of the bubble behind a widening step, in heights of the step: at rest, and for each Reynolds number; from our reference. */
const bubbleAtRest = 0.8;
const bubblePerReynoldsNumber = 1 / 60;

/**
 * A hole of two straight parts, for flow in at the first: tubes and ends of each, the step as the part of an end that the wider
 * part does not share, and by inertia the loss of the narrow part. Behind a widening step the jet gives back momentum (Borda and
 * Carnot) as long as it lands within the wide part.
 */
export function steppedHole(first: Part, second: Part): LaminarHole {
  const narrow = first.diameter <= second.diameter ? first : second;
  const wide = narrow === first ? second : first;
  const q = narrow.diameter / wide.diameter;
  const end = creepingEnds / 2;
  const creepingNumber =
    end +
    end * q ** 3 +
    end * (1 - q ** 2) +
    (creepingTube * (narrow.length + wide.length * q ** 4)) / narrow.diameter;
  const leavesNarrow = narrow === second;
  const recovered = leavesNarrow ? 0 : 2 * q ** 2 * (1 - q ** 2);
  const stepHeight = (wide.diameter - narrow.diameter) / 2;
  const landing = (wide.length / stepHeight - bubbleAtRest) / bubblePerReynoldsNumber;
  const lands = recovered > 0 && landing > 0;
  return {
    diameter: narrow.diameter,
    creepingNumber,
    lengthRatio: narrow.length / narrow.diameter,
    exit: lands ? 1 - recovered : 1,
    development: developedExcessLoss,
    contraction: freeJetLoss * (leavesNarrow ? 1 - q ** 2 : 1),
    ...(lands ? { separation: { loss: recovered, reynoldsNumber: landing } } : {}),
    onset: leavesNarrow ? sharpOnset : sharpOnset / Math.sqrt(q),
  };
}
