import type { ShockFit } from '../../lib/measure/fit/fit-shock.js';

/** Most groups of neighbouring speeds that one direction is parted into. */
const mostGroups = 6;
/** Fewest samples in one of them, where there are enough. */
const fewestSamples = 4;

/** Neighbouring speeds of a dyno record, one direction of movement, against the fitted shock. */
export interface DynoGroup {
  readonly way: 'in' | 'out';
  readonly samples: number;
  /** Mean size of the speed [m/s]. */
  readonly speed: number;
  /** Mean size of the damping [N]: what the sensor read, without gas, friction and zero as fitted. */
  readonly read: number;
  /** The same of the fitted shock. */
  readonly fitted: number;
  /** Standard uncertainty of the mean that was read [N], by the sensor alone. */
  readonly uncertainty: number;
}

interface Sample {
  readonly way: DynoGroup['way'];
  readonly speed: number;
  readonly read: number;
  readonly fitted: number;
  readonly uncertainty: number;
}

/** The forces of a dyno among the readings of a fit, as damping. */
function dynoSamples({ problem, residuals, state }: ShockFit): readonly Sample[] {
  const shock = problem.law(state);
  return residuals.flatMap(({ reading, standardised }): readonly Sample[] => {
    const of = problem.readings[reading];
    if (of?.kind !== 'force') return [];
    const { speed, position, temperature, uncertainty } = of;
    const way = speed > 0 ? 'in' : 'out';
    const warm = shock.at(temperature + state.thermometerError);
    const fitted = Math.abs(warm.dampingForce(speed, position));
    // A residual is fitted less read; outward the damping is negative.
    const read = fitted - Math.sign(speed) * standardised * uncertainty;
    return [{ way, speed: Math.abs(speed), read, fitted, uncertainty }];
  });
}

function groupOf(samples: readonly Sample[], way: DynoGroup['way']): DynoGroup {
  const mean = (of: (sample: Sample) => number): number =>
    samples.reduce((sum, sample) => sum + of(sample), 0) / samples.length;
  const square = mean(({ uncertainty }) => uncertainty ** 2);
  return {
    way,
    samples: samples.length,
    speed: mean(({ speed }) => speed),
    read: mean(({ read }) => read),
    fitted: mean(({ fitted }) => fitted),
    uncertainty: Math.sqrt(square / samples.length),
  };
}

/** The record of a dyno in groups of neighbouring speeds, each direction by itself, slowest first; none without a dyno. */
export function dynoGroups(fit: ShockFit): readonly DynoGroup[] {
  const samples = dynoSamples(fit);
  return (['in', 'out'] as const).flatMap((way) => {
    const one = samples.filter((sample) => sample.way === way);
    const sorted = [...one].sort((first, second) => first.speed - second.speed);
    const few = sorted.length <= mostGroups;
    const count = few
      ? sorted.length
      : Math.min(mostGroups, Math.max(2, Math.floor(sorted.length / fewestSamples)));
    return Array.from({ length: count }, (_, index) => {
      const [from, to] = [index, index + 1].map((at) => Math.round((at * sorted.length) / count));
      return groupOf(sorted.slice(from, to), way);
    });
  });
}
