import { requireNotNegative, requirePositive } from '../../base/checks.js';
import { InputError } from '../../base/input-error.js';
import { call, listOf, requireShape, type Shape } from '../../base/shape.js';
import type { Warning } from '../../base/warning.js';
import { stateWithin } from '../../numeric/integrator/dense-output.js';
import { integrate } from '../../numeric/integrator/integrate.js';
import { chebyshevLine } from './chebyshev-line.js';
import { type CooledBody, cooledBodyShape, heatToAir } from './cylinder-cooling.js';

/**
 * A part of a run: driving with a wind, or standing.
 *
 * @public
 */
export interface RunPart {
  /** How long [s], above 0. */
  readonly duration: number;
  /** Air along the shock [m/s], 0 or more; less than the speed of the car where the body shields it. */
  readonly windSpeed: number;
  /**
   * Heat that the strokes of the track make at an oil temperature [K], a mean over them [W], 0 or more: strokes per second times the
   * energy that each loses. 0 while the car stands.
   */
  readonly power: (temperature: number) => number;
}

/** Form of {@link RunPart}. */
export const runPartShape: Shape = { duration: 's', windSpeed: 'm/s', power: call };

/**
 * A run that heats its oil.
 *
 * @public
 */
export interface WarmingRun {
  readonly body: CooledBody;
  /** Heat capacity of oil, body, piston and shaft [J/K], above 0. */
  readonly heatCapacity: number;
  /** Air and oil at the start [K], above 0. */
  readonly airTemperature: number;
  readonly startTemperature: number;
  readonly parts: readonly RunPart[];
}

/** Form of {@link WarmingRun}. */
export const warmingRunShape: Shape = {
  body: cooledBodyShape,
  heatCapacity: 'J/K',
  airTemperature: 'K',
  startTemperature: '',
  parts: listOf(runPartShape),
};

/**
 * Temperature of the oil against time.
 *
 * @public
 */
export interface WarmingResult {
  /** [s] */
  readonly times: Float64Array;
  /** [K] */
  readonly temperatures: Float64Array;
  /** Heat made [W], at the same times. */
  readonly powers: Float64Array;
  readonly endTemperature: number;
  readonly highestTemperature: number;
  readonly warnings: readonly Warning[];
}

const samplesPerPart = 60;
const temperatureCeiling = 150;
const powerForOneTemperature = 5;
const riseInOneRun = 5;

/**
 * Warms a shock over a run, as one heat capacity: `C dT/dt = P(T) − heat to the air`.
 *
 * The power is asked at nine temperatures only, however long the run is, and a polynomial through its logarithm stands for it.
 *
 * @param run - capacities and temperatures above 0; parts one after another
 * @throws InputError for an input outside its range
 * @see lumped capacity: any heat transfer textbook, for example Bergman et al., Introduction to Heat Transfer, sec. 5.1 (from memory)
 * @public
 */
export function warmingRun(run: WarmingRun): WarmingResult {
  requireShape({ run }, { run: warmingRunShape });
  const { body, heatCapacity, airTemperature, startTemperature, parts } = run;
  requirePositive(heatCapacity, 'heatCapacity', 'J/K');
  requirePositive(airTemperature, 'airTemperature', 'K');
  requirePositive(startTemperature, 'startTemperature', 'K');
  if (parts.length === 0) throw new InputError({ field: 'parts', value: 'none', accepted: 'one or more' });
  const times: number[] = [0];
  const temperatures: number[] = [startTemperature];
  const powers: number[] = [];
  let temperature = startTemperature;
  let from = 0;
  parts.forEach((part, index) => {
    requirePositive(part.duration, `parts[${index}].duration`, 's');
    requireNotNegative(part.windSpeed, `parts[${index}].windSpeed`, 'm/s');
    const power = powerLine(part, index, temperature, run);
    if (powers.length === 0) powers.push(power(temperature));
    const to = from + part.duration;
    let next = 1;
    const state = new Float64Array(1);
    const result = integrate(
      {
        size: 1,
        rates: (_time, [now], rates) => {
          const warm = now as number;
          rates[0] = (power(warm) - heatToAir(body, warm, airTemperature, part.windSpeed)) / heatCapacity;
        },
        scales: [1],
      },
      {
        from,
        to,
        state: [temperature],
        relative: 1e-8,
        absolute: [1e-5],
        firstStep: 1e-3 * part.duration,
        onStep: (step) => {
          const end = step.time + step.length;
          for (; next <= samplesPerPart; next++) {
            const time = from + (part.duration * next) / samplesPerPart;
            if (time > end && !(next === samplesPerPart && end >= to)) break;
            stateWithin(step, Math.min(1, (time - step.time) / step.length), state);
            times.push(time);
            temperatures.push(state[0] as number);
            powers.push(power(state[0] as number));
          }
        },
      },
    );
    temperature = result.state[0] as number;
    from = to;
  });
  return {
    times: Float64Array.from(times),
    temperatures: Float64Array.from(temperatures),
    powers: Float64Array.from(powers),
    endTemperature: temperature,
    highestTemperature: Math.max(...temperatures),
    warnings: warnings(temperatures, powers, startTemperature),
  };
}

/** Power over the temperatures that the part can reach. */
function powerLine(
  part: RunPart,
  index: number,
  temperature: number,
  { body, airTemperature }: WarmingRun,
): (temperature: number) => number {
  const asked = (at: number): number => {
    const power = part.power(at);
    requireNotNegative(power, `parts[${index}].power`, 'W');
    return power;
  };
  const low = Math.min(temperature, airTemperature);
  const atStart = Math.max(asked(temperature), asked(low));
  if (atStart === 0) return () => 0;
  // Where the wind takes away what the coldest oil makes, it gets no warmer.
  let high = Math.max(temperature, airTemperature) + 1;
  const ceiling = Math.max(temperature, airTemperature) + temperatureCeiling;
  while (high < ceiling && heatToAir(body, high, airTemperature, part.windSpeed) < atStart) {
    high = Math.min(ceiling, airTemperature + 1.5 * (high - airTemperature) + 1);
  }
  const line = chebyshevLine((at) => Math.log(Math.max(asked(at), 1e-12)), low, high);
  return (at) => Math.exp(line(Math.min(Math.max(at, low), high)));
}

function warnings(
  temperatures: readonly number[],
  powers: readonly number[],
  start: number,
): readonly Warning[] {
  const found: Warning[] = [];
  const rise = Math.max(...temperatures) - start;
  if (rise > riseInOneRun) {
    found.push({
      code: 'oil-warms',
      message: 'the oil warms so much that damping changes in the run',
      value: rise,
      limit: riseInOneRun,
    });
  }
  const power = Math.max(...powers);
  if (power > powerForOneTemperature) {
    found.push({
      code: 'oil-warmer-than-body',
      message:
        'so much heat leaves the oil that it is warmer than the body; one temperature stands for both here',
      value: power,
      limit: powerForOneTemperature,
    });
  }
  return found;
}
