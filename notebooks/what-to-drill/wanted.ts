import { damperModel } from '../../lib/damper/damper-model.js';
import { oilForce } from '../../lib/damper/oil-force.js';
import type { WantedForce } from '../../lib/decisions/design/design-problem.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { type ParameterValues, quantity } from '../../lib/page/parameters/parameters.js';
import type { Build } from '../../lib/parts/parts.js';
import { damperOfBuild, feelsRight } from '../base/decision-cases.js';
import { speed } from '../base/quantities.js';
import { requireSlowBelowFast } from '../base/slow-below-fast.js';
import { percent } from '../base/wording.js';

const change = { dimension: 'ratio', unit: '%', min: -60, max: 150, step: 5 } as const;
const force = { dimension: 'force', unit: 'N', default: 0, min: 0, max: 300, step: 0.1 } as const;

function forceHelp(which: string): string {
  return `Wanted force of the oil in ${which}; 0 takes it from the build and its change.`;
}

/** What is wanted: a change against the build, or forces. */
export const wantedParameters = {
  slow: quantity({ ...speed, label: 'Slow', help: 'A slow shaft speed: roll and pitch.', default: 50 }),
  fast: quantity({ ...speed, label: 'Fast', help: 'A fast shaft speed: ruts and landings.', default: 250 }),
  slowHarder: quantity({
    ...change,
    label: 'Slow, harder by',
    help: 'How much more damping you want when slow; below 0 it is less.',
    default: 20,
  }),
  fastHarder: quantity({
    ...change,
    label: 'Fast, harder by',
    help: 'How much more damping you want when fast; below 0 it is less.',
    default: -10,
  }),
  slowCompression: quantity({
    ...force,
    label: 'Slow, compression',
    help: forceHelp('slow compression'),
  }),
  slowRebound: quantity({ ...force, label: 'Slow, rebound', help: forceHelp('slow rebound') }),
  fastCompression: quantity({
    ...force,
    label: 'Fast, compression',
    help: forceHelp('fast compression'),
  }),
  fastRebound: quantity({ ...force, label: 'Fast, rebound', help: forceHelp('fast rebound') }),
};

type WantedValues = ParameterValues<typeof wantedParameters>;

/** The four forces that are wanted, and how a sentence says so. */
export interface Wanted {
  readonly slow: WantedForce;
  readonly fast: WantedForce;
  /** `buggy front 20 % harder slow and 10 % softer fast` */
  readonly said: string;
}

/** What a reader wants of a build, forces where given and else those of the build as it feels right, changed. */
export function wantedForces(build: Build, values: WantedValues & { readonly temperature: number }): Wanted {
  const { oil, temperature } = feelsRight(build, values.temperature);
  const model = damperModel(damperOfBuild(build), fluidAt(createOil(oil.definition), temperature));
  const { slow, fast, slowHarder, fastHarder } = values;
  requireSlowBelowFast(values);
  const changed = (at: number, harder: number) => (1 + harder) * Math.abs(oilForce(model, at));
  const given = [values.slowCompression, values.slowRebound, values.fastCompression, values.fastRebound];
  return {
    slow: {
      speed: slow,
      compression: values.slowCompression || changed(slow, slowHarder),
      rebound: values.slowRebound || changed(-slow, slowHarder),
    },
    fast: {
      speed: fast,
      compression: values.fastCompression || changed(fast, fastHarder),
      rebound: values.fastRebound || changed(-fast, fastHarder),
    },
    said: given.some((one) => one > 0)
      ? 'the forces you want'
      : `${build.name} ${changeText(slowHarder, fastHarder)}`,
  };
}

function changeText(slow: number, fast: number): string {
  const [whenSlow, whenFast] = [harderOrSofter(slow), harderOrSofter(fast)];
  return whenSlow === whenFast ? whenSlow : `${whenSlow} slow and ${whenFast} fast`;
}

function harderOrSofter(harder: number): string {
  if (percent(harder) === percent(0)) return 'as it is';
  return harder > 0 ? `${percent(harder)} harder` : `${percent(-harder)} softer`;
}
