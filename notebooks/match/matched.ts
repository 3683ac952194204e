import type { DamperModel } from '../../lib/damper/damper-model.js';
import type { DampingMismatch, WantedDamping } from '../../lib/decisions/match/damping-mismatch.js';
import type { Build, OilPart } from '../../lib/parts/parts.js';
import type { Outcome } from './landings.js';

/** A fill of the new shock, compared with what is wanted. */
export interface MatchedFill {
  readonly name: string;
  readonly model: DamperModel;
  readonly mismatch: DampingMismatch;
  /** Its landing, where the landing is what should come back. */
  readonly landing?: Outcome;
}

/** Everything that the page shows of a match. */
export interface Match {
  readonly build: Build;
  readonly right: { readonly oil: OilPart; readonly temperature: number };
  readonly wanted: WantedDamping;
  readonly exact: MatchedFill;
  /** Bottles of the shop, the nearest first. */
  readonly singles: readonly MatchedFill[];
  readonly temperature: number;
  /** The new shock on the oil of the build, at that temperature: what happens if nothing is done. */
  readonly same: DamperModel;
}
