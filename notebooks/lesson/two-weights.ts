import { standardGravity } from '../../lib/base/constants.js';
import { InputError } from '../../lib/base/input-error.js';
import { frictionFromTwoWeights } from '../../lib/fill/friction/two-weights.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { damperLaw, statedState } from '../../lib/measure/model/damper-law.js';
import { timeOfDrop } from '../../lib/measure/model/drop-time.js';
import { usualUncertainty } from '../../lib/measure/reading/reading.js';
import { bracketedRoot } from '../../lib/numeric/root-finding.js';
import type { RevealBlock } from '../../lib/page/index.js';
import type { Build } from '../../lib/parts/index.js';
import { formatQuantity } from '../../lib/units/index.js';
import { plusMinus } from '../base/measured-shocks.js';
import { percent, seconds } from '../base/wording.js';
import type { Bench } from './bench.js';

/** Weights that a bench has [kg]; the heavier one of two is twice the lighter. */
const weights = [0.05, 0.1, 0.2, 0.5, 1, 2];
/** The lighter one pulls so many times as hard as the seals rub. */
const clearly = 2.5;
/** Parts of what moves the oil that the other shock's seals may take: the largest for which there is an oil thin enough. */
const takable = [0.4, 0.2, 0.1, 0.05] as const;
/** Ends of the timed stretch, as parts of the stroke. */
const stretch = { from: 0.85, to: 0.1 } as const;
/** Viscosities over that on the bench within which the other oil is looked for. */
const searched = { thinnest: 0.05, thickest: 2 } as const;

/** One of two shocks that a single weight cannot tell apart. */
interface Suspect {
  readonly name: string;
  readonly friction: number;
  /** Viscosity over that on the bench. */
  readonly thicker: number;
  readonly times: readonly [number, number];
}

/** The shock on the bench, and one with more friction and thinner oil that the lighter weight pulls out in the same time. */
function suspects(build: Build, { model }: Bench, temperature: number) {
  const { damper } = model;
  const oil = createOil(build.oil.definition);
  const law = damperLaw(damper, oil);
  const known = statedState(damper, oil);
  const { stroke } = build.shock;
  const drop = (mass: number) => ({
    mass,
    temperature,
    from: stretch.from * stroke,
    to: stretch.to * stroke,
  });
  const gasForce = law(known)
    .at(temperature)
    .gasForce(((stretch.from + stretch.to) / 2) * stroke);
  const light = weights.find((mass) => mass * standardGravity + gasForce > clearly * known.friction) ?? 2;
  const masses = [light, 2 * light] as const;
  const timeOf = (mass: number, friction: number, thicker: number): number =>
    timeOfDrop(
      law({ ...known, friction, kinematicViscosity: thicker * known.kinematicViscosity }),
      drop(mass),
    );
  const suspect = (name: string, friction: number, thicker: number): Suspect => ({
    name,
    friction,
    thicker,
    times: [timeOf(masses[0], friction, thicker), timeOf(masses[1], friction, thicker)],
  });
  const bench = suspect('on the bench', known.friction, 1);
  const [low, high] = [Math.log(searched.thinnest), Math.log(searched.thickest)];
  const frictionWhere = (taken: number): number =>
    known.friction + taken * (light * standardGravity + gasForce - known.friction);
  const excessAt = (friction: number, logarithm: number): number =>
    timeOf(light, friction, Math.exp(logarithm)) / bench.times[0] - 1;
  const more = takable.map(frictionWhere).find((friction) => excessAt(friction, low) < 0);
  if (more === undefined)
    throw new InputError({
      field: `the piston of ${build.name}`,
      value: 'one through which thinner oil goes no quicker',
      accepted:
        'one that oil of a twentieth of the viscosity passes clearly quicker: narrower holes, or thicker oil',
    });
  const excess = (logarithm: number): number => excessAt(more, logarithm);
  const thicker = Math.exp(bracketedRoot(excess, low, high, 'viscosity of the other shock').root);
  return {
    masses,
    gasForce,
    length: (stretch.from - stretch.to) * stroke,
    bench,
    other: suspect('the other', more, thicker),
  };
}

/** Why two weights: one cannot tell friction from oil. */
export function twoWeightsExperiment(build: Build, onBench: Bench, temperature: number): RevealBlock {
  const { masses, gasForce, length, bench, other } = suspects(build, onBench, temperature);
  const [light, heavy] = masses.map((mass) => formatQuantity(mass, 'mass', 'g', 4));
  const newtons = (force: number): string => formatQuantity(force, 'force', 'N', 2);
  const both = ({ times: [slow, quick] }: Suspect) =>
    frictionFromTwoWeights(
      { pull: masses[0] * standardGravity, time: slow },
      { pull: masses[1] * standardGravity, time: quick },
      // Without an error nothing is refused: how much a hand tells is said below.
      { length, gasForce, timeError: 0 },
    );
  const byHand = [bench, other].map((one) => both(one).friction);
  const off = [bench, other].map(({ friction }, index) => Math.abs((byHand[index] ?? 0) - friction));
  const [slow, quick] = bench.times;
  const handError =
    ((masses[1] - masses[0]) * standardGravity * Math.hypot(slow, quick) * usualUncertainty.stopwatch) /
    (slow - quick) ** 2;
  const apart = other.times[1] / quick;
  // Damping grows a little faster than the speed, the more so the quicker the shaft.
  const allowed = 0.1 * masses[0] * standardGravity;
  return {
    kind: 'reveal',
    id: 'two-weights',
    question: `${light} hung on the shaft pull it out in ${seconds(slow)}. Another shock takes the same ${seconds(other.times[0])}: its seals rub with ${newtons(other.friction)} instead of ${newtons(bench.friction)}, and its oil is ${percent(1 - other.thicker)} thinner. Now ${heavy} hang on both. Which comes out first?`,
    choices: [
      'Both together again.',
      'The other one, with more friction and thinner oil.',
      'The one on the bench, with less friction and thicker oil.',
    ],
    blocks: [
      {
        kind: 'text',
        text: `${apart < 1 ? 'B' : 'C'}. The other one takes ${seconds(other.times[1])}, the one on the bench ${seconds(quick)}: friction takes the same from both weights, so that of the heavier one it takes the smaller part, and the oil is what is left to tell them apart. One weight gives one number for two unknowns, however good the clock; a second weight gives the second number.`,
      },
      {
        kind: 'table',
        id: 'by-hand-weights',
        title: 'Two shocks and two weights',
        table: {
          columns: [
            { label: 'Shock', unit: '' },
            { label: 'Friction', unit: 'N', dimension: 'force' },
            { label: 'Viscosity over that on the bench', unit: '%', dimension: 'ratio' },
            { label: `Time of ${light ?? ''}`, unit: 's', dimension: 'time', digits: 4 },
            { label: `Time of ${heavy ?? ''}`, unit: 's', dimension: 'time', digits: 4 },
          ],
          rows: [bench, other].map(({ name, friction, thicker, times }) => [
            name,
            friction,
            thicker,
            ...times,
          ]),
        },
      },
      {
        kind: 'text',
        text: `By hand: friction is (m₁ t₁ − m₂ t₂) g / (t₁ − t₂) and the push of the gas, ${newtons(gasForce)}. Work it out for both rows. With times by hand, each good to ${seconds(usualUncertainty.stopwatch)}, it would be ${plusMinus(bench.friction, 2 * handError, 'N')} on the bench (19 of 20): more repeats, a longer stretch or a heavier second weight make that less.`,
      },
      {
        kind: 'check',
        claim: 'Two weights give the friction of both shocks back',
        passed: off.every((one) => one < allowed),
        detail: `${byHand.map((force) => newtons(force)).join(' and ')} by hand, ${newtons(bench.friction)} and ${newtons(other.friction)} on the page; a tenth of the lighter weight, ${newtons(allowed)}, allowed: damping grows a little faster than the speed, which the formula takes for less friction`,
        ifFailed: 'The shock is too quick for the formula: hang lighter weights',
      },
    ],
  };
}
