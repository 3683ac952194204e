import { canCavitate } from '../../damper/chamber-pressures.js';
import { type Damper, shaftArea } from '../../damper/damper.js';
import { discOpeningPressure } from '../../flow/valve/disc-valve.js';
import { gasPressure, gasState } from '../../gas/gas-state.js';
import { formatQuantity } from '../../units/index.js';

/** Says which discs lift only after cavitation has begun, wherever in the stroke the shaft is: with travel they still may. */
export function valveRemarks(damper: Damper): readonly string[] {
  const { gas, piston, stroke } = damper;
  const bar = (pressure: number): string => formatQuantity(pressure, 'pressure', 'bar', 3);
  return (piston.valves ?? []).flatMap((valve, index): string[] => {
    if (!canCavitate(gas.layout, valve.face === 'shaft-side' ? 1 : -1)) return [];
    const opening = discOpeningPressure(valve, piston);
    const onset = gasPressure(gasState(gas), shaftArea(damper) * stroke) - gas.airReleasePressure;
    if (opening < onset) return [];
    return [
      `Valve ${index + 1} lifts at ${bar(opening)}, but cavitation begins at ${bar(onset)} at the latest: it lifts only after that, as the cavity squeezes the gas.`,
    ];
  });
}
