import type { CompensatorKind, ShockPart } from '../shock-part.js';
import { gasFractionOf } from './gas-statement.js';
import { ShockFault } from './shock-fault.js';
import { millilitres } from './words.js';

/** Oil that the file says stays, from its own key or from the syringe. */
export function oilStated({ oilVolume, closing }: ShockPart): number | undefined {
  const syringe = closing?.poured === undefined ? undefined : closing.poured - (closing.drawnOff ?? 0);
  if (oilVolume === undefined || syringe === undefined) return oilVolume ?? syringe;
  if (Math.abs(syringe - oilVolume) <= Math.max(0.1e-6, 0.05 * oilVolume)) return oilVolume;
  throw new ShockFault(
    ['oil-volume'],
    oilVolume,
    `says ${millilitres(oilVolume)}, but "closing" pours ${millilitres(syringe)} that stay: one of them is wrong`,
  );
}

/** Room that oil and the air beaten into it take together. */
export function roomFor(
  oil: number | undefined,
  shock: ShockPart,
  kind: CompensatorKind,
): number | undefined {
  if (oil === undefined || kind !== 'emulsion') return oil;
  return oil / (1 - gasFractionOf(shock, kind));
}
