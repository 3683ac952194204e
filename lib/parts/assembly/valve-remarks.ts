import { canCavitate } from '../../damper/chamber-pressures.js';
import { type Damper, shaftArea } from '../../damper/damper.js';
import { openingPressureOf } from '../../flow/valve/disc-valve.js';
import { gasState, pressureOfGas } from '../../gas/gas-state.js';
import { formatQuantity } from '../../units/index.js';

/** Says which discs lift only after cavitation has begun, wherever in the stroke the shaft is: with travel they still may. */
export function valveRemarks(damper: Damper): readonly string[] {
  const { gas, piston, stroke } = damper;
  const bar = (pressure: number): string => formatQuantity(pressure, 'pressure', 'bar', 3);
  return (piston.valves ?? []).flatMap((valve, index): string[] => {
    if (!canCavitate(gas.layout, valve.face === 'shaft-side' ? 1 : -1)) return [];
    const opening = openingPressureOf(valve, piston);
    const onset = pressureOfGas(gasState(gas), shaftArea(damper) * stroke) - gas.airReleasePressure;
    if (opening < onset) return [];
    return [
      `Valve ${index + 1} lifts at ${bar(opening)}, but cavitation begins at ${bar(onset)} at the latest: it lifts only after that, as the cavity squeezes the gas.`,
    ];
  });
}
