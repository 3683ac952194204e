import { chamberVolume } from '../../lib/fill/chamber/chamber.js';
import { chamberContents, lockPosition } from '../../lib/fill/chamber/pressure-inside.js';
import type { Block } from '../../lib/page/index.js';
import { makeRoom, millilitres, millimetres } from '../base/bench-wording.js';
import { handChecks } from '../base/by-hand.js';
import { celsius } from '../base/wording.js';
import { damperAt, warmedTo } from './built-shock.js';
import type { Choices, SheetNumbers } from './numbers.js';

/** Claims that the sheet tests: its volumes against each other, its damping against textbooks. */
export function sheetChecks(numbers: SheetNumbers, choices: Choices): readonly Block[] {
  const { built } = numbers;
  return [
    volumeCheck(numbers, choices),
    ...handChecks([{ name: built.build.name, model: damperAt(built, choices.bench) }]),
  ];
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
    ifFailed: 'Do not build after this page; report it with the parts file',
    consistency: true,
  };
}

/** Says where hot oil locks the shaft before the end of its stroke; nothing where it goes all the way in. */
export function lockCaution({ built, lockAt }: SheetNumbers, choices: Choices): readonly Block[] {
  const { stroke } = built.build.shock;
  if (lockAt > stroke) return [];
  const hot = celsius(choices.hottest);
  const helps = makeRoom(built.closing.position, stroke);
  const text =
    lockAt > 0
      ? `With oil at ${hot} the shaft locks ${millimetres(lockAt)} in, before the end of its stroke of ${millimetres(stroke)}: ${helps}.`
      : `With oil at ${hot} its oil would fill it with the shaft fully out: ${helps}.`;
  return [{ kind: 'caution', text }];
}
