import { standardGravity } from '../../lib/base/constants.js';
import type { Candidate } from '../../lib/measure/answer/next-measurement.js';
import {
  type DropReading,
  frameUncertainty,
  type Reading,
  usualUncertainty,
} from '../../lib/measure/reading/reading.js';
import { formatQuantity } from '../../lib/units/index.js';
import type { MeasuredShockCase } from './measured-shocks.js';
import { celsius } from './wording.js';

/** How many degrees colder a drop in the cold is [K]. */
const colder = 14;
/** Weights that a bench has [kg]. */
const weights = [0.05, 0.1, 0.2, 0.5];
const filmRate = 240;

/** What could be measured at home on a shock, with the minutes that it takes (common practice, no source). */
export function possibleMeasurements({
  build,
  problem,
  temperature,
}: MeasuredShockCase): readonly Candidate[] {
  const { stroke } = build.shock;
  // All but the first millimetres, where a weight gathers speed.
  const stretch = { from: Math.max(stroke - 0.004, 0.6 * stroke), to: Math.min(0.003, 0.1 * stroke) };
  const drop = (mass: number, film: boolean, at: number): DropReading => ({
    kind: 'drop',
    mass,
    times: film ? [1, 1, 1] : [1, 1, 1, 1, 1],
    timing: film ? 'frames' : 'hand',
    uncertainty: film ? frameUncertainty(filmRate, 2 / filmRate) : usualUncertainty.stopwatch,
    temperature: at,
    ...stretch,
  });
  const heavy = weights.filter((mass) => moves(problem, drop(mass, true, temperature)));
  const drops = heavy.flatMap((mass): readonly Candidate[] => {
    const grams = formatQuantity(mass, 'mass', 'g');
    const film = {
      name: `film ${grams} at ${filmRate} frames a second, 3 times`,
      minutes: 12,
      readings: [drop(mass, true, temperature)],
    };
    const hand = {
      name: `time ${grams} by hand, 5 times`,
      minutes: 5,
      readings: [drop(mass, false, temperature)],
    };
    return [hand, film];
  });
  // What falls warm may be held in the cold, where the gas has less pressure.
  const light = heavy.find((mass) => moves(problem, drop(mass, true, temperature - colder)));
  const cold =
    light === undefined
      ? []
      : [
          {
            name: `film ${formatQuantity(light, 'mass', 'g')} with the shock at ${celsius(temperature - colder)}`,
            minutes: 45,
            readings: [drop(light, true, temperature - colder)],
          },
        ];
  const scale: readonly Reading[] = [0.2, 0.5, 0.8].flatMap((share) =>
    (['in', 'out'] as const).map((moving) => ({
      kind: 'scale' as const,
      position: share * stroke,
      moving,
      temperature,
      force: 0,
      uncertainty: usualUncertainty.scale,
    })),
  );
  const { kinematicViscosity, holeDiameter } = problem.known;
  return [
    ...drops,
    ...cold,
    { name: 'push the shaft on a scale and let it out, at 3 places', minutes: 8, readings: scale },
    {
      name: 'let a ball of 1.5 mm sink in the oil',
      minutes: 20,
      readings: [
        {
          kind: 'viscosity',
          kinematicViscosity,
          temperature,
          relativeUncertainty: usualUncertainty.fallingBall,
        },
      ],
    },
    {
      name: 'put a pin gauge in the holes',
      minutes: 10,
      readings: [{ kind: 'hole', diameter: holeDiameter, uncertainty: usualUncertainty.pinGauge }],
    },
  ];
}

/** Whether a weight clearly moves the shaft as stated: with twice the friction it still does. */
function moves({ law, known }: MeasuredShockCase['problem'], drop: DropReading): boolean {
  const warm = law(known).at(drop.temperature);
  const gas = Math.min(warm.gasForce(drop.from), warm.gasForce(drop.to));
  return drop.mass * standardGravity + gas > 2 * known.friction;
}
