import { oilOutOnClosing } from '../../lib/fill/chamber/oil-out.js';
import type { Build } from '../../lib/parts/parts.js';
import { knownShock } from './known.js';

/** Oil poured into one shock of a build for a fill [m³]: to the rim with the shaft fully out; what comes out again is not poured twice. */
export function oilPoured(build: Pick<Build, 'shock' | 'piston' | 'oil' | 'closeAt'>): number {
  const { closed } = knownShock(build);
  return oilOutOnClosing(closed.chamber, closed.compensator, closed.closing, 0).poured;
}
