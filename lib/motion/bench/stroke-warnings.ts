import type { Warning } from '../../base/warning.js';
import type { MovingShock } from '../shock/moving-shock.js';
import type { LeftOutInertia } from '../shock/oil-inertia.js';
import { shockWarnings } from '../shock/shock-warnings.js';

interface StrokePeaks {
  readonly largestDrop: { readonly value: number };
  readonly smallestDrop: { readonly value: number };
  readonly largestCavity: { readonly value: number };
  readonly largestBlindPressure: { readonly value: number };
  readonly largestShaftPressure: { readonly value: number };
  readonly inertia: LeftOutInertia;
}

/** What a stroke passed that its laws do not cover. */
export function strokeWarnings(shock: MovingShock, peaks: StrokePeaks): readonly Warning[] {
  const largestDrop = Math.max(peaks.largestDrop.value, -peaks.smallestDrop.value);
  return shockWarnings(shock, {
    largestDrop,
    largestCavity: peaks.largestCavity.value,
    largestGasPressure:
      shock.layout === 'shaft-side' ? peaks.largestShaftPressure.value : peaks.largestBlindPressure.value,
    inertia: peaks.inertia,
  });
}
