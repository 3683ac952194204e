import { chamberVolume } from '../../lib/fill/chamber/chamber.js';
import { chamberContents, lockPosition } from '../../lib/fill/chamber/pressure-inside.js';
import type { Block } from '../../lib/page/index.js';
import { duration, millilitres, millimetres } from '../base/bench-wording.js';
import { celsius } from '../base/wording.js';
import { warmedTo } from './built-shock.js';
import type { Choices, SheetNumbers } from './numbers.js';

/** Claims that the sheet tests on its own numbers. */
export function sheetChecks(numbers: SheetNumbers, choices: Choices): readonly Block[] {
  return [volumeCheck(numbers, choices), ...timeChecks(numbers)];
}

function volumeCheck({ built }: SheetNumbers, choices: Choices): Block {
  const whole = chamberVolume(built.shock.chamber);
  const { stroke } = built.build.shock;
  let worst = 0;
  for (const temperature of [choices.coldest, choices.bench, choices.hottest]) {
    const condition = warmedTo(built, temperature);
    for (let part = 0; part <= 1; part += 0.125) {
      if (part * stroke >= lockPosition(built.shock, condition)) continue;
      const { oil, gas, shaft, solid } = chamberContents(built.shock, part * stroke, condition);
      worst = Math.max(worst, Math.abs(oil + gas + shaft + solid - whole));
    }
  }
  return {
    kind: 'check',
    claim: 'Oil, gas, shaft and solid parts fill the body exactly, in nine positions at three temperatures',
    passed: worst <= 1e-12 * whole,
    detail: `${millilitres(whole)}, off by at most ${(worst / whole).toExponential(0)} of it`,
  };
}

/** Whether the sheet promises something that the shock cannot do: a claim that may well fail, and then says why. */
export function lockCheck({ built, lockAt }: SheetNumbers, choices: Choices): Block {
  const { stroke } = built.build.shock;
  return {
    kind: 'check',
    claim: `The shaft goes all the way in with oil at ${celsius(choices.hottest)}`,
    passed: lockAt > stroke,
    detail:
      lockAt > 0
        ? `it would lock at ${millimetres(lockAt)}, the stroke is ${millimetres(stroke)}`
        : 'its oil would fill it with the shaft fully out',
  };
}

/** Whether the time that a weight takes lies inside its interval. */
export function timeChecks({ hung }: Pick<SheetNumbers, 'hung'>): readonly Block[] {
  if (typeof hung === 'string') return [];
  return [
    {
      kind: 'check',
      claim: 'The expected time of the weight lies inside its interval',
      passed: hung.low < hung.typical && hung.typical < hung.high,
      detail: `${duration(hung.low)}, ${duration(hung.typical)}, ${duration(hung.high)}`,
    },
  ];
}
