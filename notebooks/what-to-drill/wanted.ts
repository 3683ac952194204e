import { InputError } from '../../lib/base/input-error.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { oilForce } from '../../lib/damper/oil-force.js';
import type { WantedForce } from '../../lib/decisions/design/design-problem.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { quantity } from '../../lib/page/parameters/declare-parameters.js';
import type { ParameterValues } from '../../lib/page/parameters/parameters.js';
import type { Build } from '../../lib/parts/parts.js';
import { bringBack } from '../base/bring-back.js';
import { damperOfBuild, feelsRight } from '../base/decision-cases.js';
import { dropOfWheel } from '../base/drop.js';
import { landedOrTouched } from '../base/fast-speed.js';
import { knownOil } from '../base/known.js';
import { middleSpeed, slowSpeed } from '../base/shaft-speeds.js';
import { percent, shaftSpeed } from '../base/wording.js';

const change = { dimension: 'ratio', unit: '%', min: -60, max: 150, step: 5 } as const;
const force = { dimension: 'force', unit: 'N', default: 0, min: 0, max: 300, step: 0.1 } as const;

function forceHelp(which: string): string {
  return `Wanted force of the oil in ${which}; 0 takes it from the build and its change.`;
}

/** What is wanted: a change against the build, or forces. */
export const wantedParameters = {
  back: bringBack,
  drop: dropOfWheel,
  slow: slowSpeed,
  middle: middleSpeed,
  slowHarder: quantity({
    ...change,
    label: 'Slow, harder by',
    help: 'How much more damping you want when slow; below 0 it is less.',
    default: 20,
  }),
  middleHarder: quantity({
    ...change,
    label: 'Middle, harder by',
    help: 'How much more damping you want at the middle speed; below 0 it is less.',
    default: -10,
  }),
  slowCompression: quantity({
    ...force,
    label: 'Slow, compression',
    help: forceHelp('slow compression'),
  }),
  slowRebound: quantity({ ...force, label: 'Slow, rebound', help: forceHelp('slow rebound') }),
  middleCompression: quantity({
    ...force,
    label: 'Middle, compression',
    help: forceHelp('compression at the middle speed'),
  }),
  middleRebound: quantity({
    ...force,
    label: 'Middle, rebound',
    help: forceHelp('rebound at the middle speed'),
  }),
};

type WantedValues = ParameterValues<typeof wantedParameters>;

/** The four forces that are wanted, and how a sentence says so. */
export interface Wanted {
  readonly slow: WantedForce;
  readonly fast: WantedForce;
  /** What would be wanted at the middle speed, which a landing does not ask for. */
  readonly beside?: WantedForce;
  /** `buggy front 20 % harder at 30 mm/s and 10 % softer at 300 mm/s` */
  readonly said: string;
}

/** What a reader wants of a build, forces where given and else those of the build as it feels right, changed. */
export function wantedForces(build: Build, values: WantedValues & { readonly temperature: number }): Wanted {
  const { oil, temperature } = feelsRight(build, values.temperature);
  const model = damperModel(damperOfBuild(build), fluidAt(knownOil(oil.definition), temperature));
  const { slow, slowHarder } = values;
  const landing = values.back === 'same landing';
  // What passes the piston as fast as it lands decides how far it goes in: the search looks there, and lets what it finds land.
  const fast = landing ? landedOrTouched(build) : values.middle;
  if (!(slow < fast))
    throw new InputError({
      field: 'slow',
      value: shaftSpeed(slow),
      accepted: `below ${landing ? 'that of the landing' : 'middle'}, ${shaftSpeed(fast)}`,
    });
  const changed = (at: number, harder: number) => (1 + harder) * Math.abs(oilForce(model, at));
  const forces = (speed: number, harder: number, inward: number, outward: number): WantedForce => ({
    speed,
    compression: inward || changed(speed, harder),
    rebound: outward || changed(-speed, harder),
  });
  const { middle, middleHarder, middleCompression, middleRebound } = values;
  const atMiddle = forces(middle, middleHarder, middleCompression, middleRebound);
  const given = [
    values.slowCompression,
    values.slowRebound,
    ...(landing ? [] : [middleCompression, middleRebound]),
  ];
  return {
    slow: forces(slow, slowHarder, values.slowCompression, values.slowRebound),
    fast: landing ? forces(fast, 0, 0, 0) : atMiddle,
    ...(landing ? { beside: atMiddle } : {}),
    said: landing
      ? `${build.name} ${given.some((one) => one > 0) ? `with the forces you want` : harderOrSofter(slowHarder)} at ${shaftSpeed(slow)} and landing as it does`
      : given.some((one) => one > 0)
        ? 'the forces you want'
        : `${build.name} ${changeText(slowHarder, slow, middleHarder, fast)}`,
  };
}

function changeText(slowHarder: number, slow: number, middleHarder: number, middle: number): string {
  const [whenSlow, atMiddle] = [harderOrSofter(slowHarder), harderOrSofter(middleHarder)];
  if (whenSlow === atMiddle) return whenSlow;
  return `${whenSlow} at ${shaftSpeed(slow)} and ${atMiddle} at ${shaftSpeed(middle)}`;
}

function harderOrSofter(harder: number): string {
  if (percent(harder) === percent(0)) return 'as it is';
  return harder > 0 ? `${percent(harder)} harder` : `${percent(-harder)} softer`;
}
