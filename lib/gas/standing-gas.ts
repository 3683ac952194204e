import { refuse, requireFinite, requireRecord } from '../base/checks.js';
import { ConvergenceError } from '../numeric/root-finding.js';
import type { Gas } from './gas.js';
import type { RestingRoom } from './gas-room.js';
import { type GasState, gasState, rootFromZero } from './gas-state.js';

/**
 * The gas after the shock has stood for hours or days with its shaft at one place: air has come out of the oil, or gone into it, until both hold what belongs to
 * the pressure (Henry). From there strokes squeeze it, too fast for any more of that.
 *
 * What is dissolved counts as gas of the same pressure that takes no room, so that slowly `p (V − w + D) = p₀ τ (V + D)`, with `D` the dissolved air.
 *
 * @param gas - checked by `requireGas`
 * @param standing - displaced volume where it stood, counted from full extension [m³]; temperature [K] and oil expansion, as closed where left out; polytropic exponent of the
 * movement afterwards, that of the gas where left out
 * @throws InputError for a value outside its range, and where no gas is left at that place
 * @see Henry's law, in any textbook of physical chemistry; the Ostwald coefficient of ASTM D2779 is the dissolved volume per volume of oil (from memory)
 * @example
 * ```ts
 * const gas = sealedGas({ volume: 1e-6, pressure: 1e5, polytropicExponent: 1.4 });
 * gasPressure(standingGas(gas, { displacedVolume: 5e-7 }), 5e-7); // 2e5: squeezed slowly, whatever the exponent of a stroke (Boyle)
 * ```
 * @public
 */
export function standingGas(
  gas: Gas,
  standing: {
    readonly displacedVolume: number;
    readonly temperature?: number;
    readonly oilExpansion?: number;
    readonly polytropicExponent?: number;
  },
): GasState {
  requireRecord(standing, 'standing');
  requireFinite(standing.displacedVolume, 'displacedVolume', 'm³');
  const moved = gasState(gas, standing);
  const { closing } = gas;
  const warmth = moved.temperature / closing.temperature;
  const asked = standing.displacedVolume - moved.restDisplacement;
  const taken = gas.rooms.map(({ volume, stiffness, vented, dissolvedAir = 0 }) => (logPressure: number) => {
    const pressure = closing.pressure * Math.exp(logPressure);
    if (vented) return Math.min((pressure - closing.pressure) / stiffness, volume);
    const held = volume + dissolvedAir;
    const free = held * (1 - (closing.pressure * warmth) / pressure);
    if (stiffness === 0) return Math.min(free, volume);
    // Sealed behind walls: p = p₀ τ V/(V − w) + k w, a quadratic in w; the rubber keeps oil and gas apart.
    const a = stiffness;
    const b = -(pressure + stiffness * volume);
    const c = (pressure - closing.pressure * warmth) * volume;
    return (-b - Math.sqrt(b * b - 4 * a * c)) / (2 * a);
  });
  const held = gas.rooms.reduce((sum, { volume, dissolvedAir = 0 }) => sum + volume + dissolvedAir, 0);
  // As a part of all gas, so that no product of two values falls below the smallest number.
  const excess = (at: number): number => (taken.reduce((sum, room) => sum + room(at), 0) - asked) / held;
  const logPressure = pressureOrRefusal(excess, standing.displacedVolume);
  const pressure = closing.pressure * Math.exp(logPressure);
  const rooms = gas.rooms.flatMap(({ volume, stiffness, vented }, index): RestingRoom[] => {
    const release = taken[index]?.(logPressure) ?? 0;
    const left = volume - release;
    if (left <= 0) return [];
    const wallPressure = stiffness * release;
    const gasPressure = vented ? closing.pressure : pressure - wallPressure;
    return [
      {
        volume: left,
        logGasPressure: Math.log(gasPressure / closing.pressure),
        gasPressure,
        wallPressure,
        stiffness,
        vented,
      },
    ];
  });
  const volumes = rooms.reduce((sum, { volume }) => sum + volume, 0);
  return {
    ...moved,
    rooms,
    restDisplacement: standing.displacedVolume,
    capacity: standing.displacedVolume + volumes,
  };
}

/** The pressure at which the rooms give up what is asked, as a logarithm; there is none where they hold less. */
function pressureOrRefusal(excess: (logPressure: number) => number, displacedVolume: number): number {
  try {
    return rootFromZero(excess, 'pressure of a standing shock');
  } catch (error) {
    if (error instanceof ConvergenceError)
      refuse(displacedVolume, 'displacedVolume', 'm³', 'such that some gas is left beside it, in');
    throw error;
  }
}
