import { usualUncertainty } from '../../lib/measure/reading/reading.js';
import type { ChecklistStep } from '../../lib/page/index.js';
import { formatQuantity } from '../../lib/units/index.js';
import { duration, grams, millimetres } from '../base/bench-wording.js';
import { type HangTime, type NoTime, timedStretch } from './hang-test.js';
import type { Choices, SheetNumbers } from './numbers.js';

/** Checks of a closed shock with a scale and a stopwatch, without its spring. */
export function stepsOfChecking(numbers: SheetNumbers, choices: Choices): readonly ChecklistStep[] {
  const { from, to } = timedStretch(numbers.built);
  const stretch = `from ${millimetres(from)} in to ${millimetres(to)} in`;
  return [
    pushStep(numbers),
    {
      title: 'Hang a weight',
      text: `Body held, shaft down, weight on its eyelet with rod end and shaft counted in. Time it ${stretch}.`,
      aim: `${massText(choices.weight)}: ${timeText(numbers.hung)}`,
      prevents: 'the wrong oil, a piston drilled too large, air in the oil',
      writeIns: [{ label: 'Time', unit: 's' }],
    },
    {
      title: 'Hang a lighter weight',
      text: `The same stretch. Two times tell friction and oil apart: without gas, friction is (m₁ t₁ − m₂ t₂) / (t₁ − t₂). With gas and the hand’s error: the settings of this page.`,
      aim: `${massText(choices.lighterWeight)}: ${timeText(numbers.hungLighter)}`,
      prevents: 'friction taken for thick oil',
      writeIns: [
        { label: 'Time', unit: 's' },
        { label: 'Friction', unit: 'g' },
      ],
    },
    {
      title: 'Against its partner',
      text: 'Both shafts fully in, let go together, then both hung with the same weight.',
      aim: partnerAim(numbers.hung),
      prevents: 'a car that turns one way better than the other',
      writeIns: [{ label: 'Difference', unit: 's' }],
    },
  ];
}

function pushStep({ built, pushes, slowHand }: SheetNumbers): ChecklistStep {
  const friction = built.build.shock.seal.typical.kineticForce;
  const slowly =
    slowHand === undefined
      ? 'slowly'
      : `slowly: below ${formatQuantity(slowHand, 'speed', 'mm/s', 2)}, above which damping adds more than a tenth of the friction`;
  return {
    title: 'Push at three places',
    text: `On the scale as for the friction, ${slowly}. At each place read going down and coming up; below nothing the scale is pulled, and the shaft does not come back by itself.`,
    ...(pushes.length === 0 ? { aim: 'The shaft locks before the first of them' } : {}),
    prevents: 'a closing position that slipped, and sticky seals',
    writeIns: pushes.map(({ position, gas }) => ({
      label: `${millimetres(position)} in, ${grams(gas + friction)} and ${grams(gas - friction)}:`,
      unit: '',
    })),
  };
}

/** Two shocks of one sheet may differ by what the tolerances leave open, and by no more. */
function partnerAim(time: HangTime | NoTime): string {
  if (typeof time === 'string') return 'None: see the weight above';
  return `Within ${duration(time.high - time.low)}: so much the tolerances explain`;
}

const massText = (mass: number): string => `${Math.round(1e3 * mass)} g`;

function timeText(time: HangTime | NoTime): string {
  if (typeof time === 'string') return time;
  return `${duration(time.typical)} (${duration(time.low)} to ${duration(time.high)}), the hand ± ${2 * usualUncertainty.stopwatch} s`;
}
