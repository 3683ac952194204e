import { shaftExposed } from '../../lib/fill/length/shock-length.js';
import type { ChecklistStep } from '../../lib/page/index.js';
import { roundedText } from '../../lib/units/index.js';
import { duration, millilitres, millimetres } from '../base/bench-wording.js';
import { celsius } from '../base/wording.js';
import { type Choices, type SheetNumbers, worthTravel } from './numbers.js';

/** Steps of a build from pouring to the last bleed. */
export function stepsWithOil(numbers: SheetNumbers, choices: Choices): readonly ChecklistStep[] {
  const { bleeds, oil, wait } = numbers;
  const bubble = millimetres(choices.smallestBubble);
  return [
    {
      title: 'Pour',
      text: `Oil and parts at bench temperature, shaft fully out, body upright in a stand. Let the oil run down the wall, up to the rim.`,
      aim: `${millilitres(oil.poured)} at ${celsius(choices.bench)}`,
      prevents: 'air beaten into the oil, and a fill that changes with the weather',
      writeIns: [{ label: 'Oil at', unit: '°C' }],
    },
    {
      title: 'Clear the piston',
      text: `Slow strokes, piston always under oil, until no new bubble shows. ${stuckSentence(numbers)}`,
      prevents: 'dead travel from air that sits under the piston',
      writeIns: [{ label: 'Strokes', unit: '' }],
    },
    {
      title: 'Wait',
      text: `Upright, shaft fully out. After this time no bubble over ${bubble} is left below the surface, even if dirt holds its surface.`,
      aim: duration(wait),
      prevents: 'a soft first part of the stroke',
      writeIns: [{ label: 'Waited', unit: 'min' }],
    },
    closingStep(numbers),
    {
      title: 'Work it and bleed again',
      text: `Full strokes, cap up, until nothing more rises; wait again, then open the bleed with the shaft at the same place, top up, close. ${bleedSentence(numbers)}`,
      aim: bleeds < 2 ? 'Once is enough, if it looks clear' : `Bleed ${bleeds} times in all`,
      prevents: 'air that the first strokes set free',
      writeIns: [{ label: 'Bleeds', unit: '' }],
    },
  ];
}

function stuckSentence({ built, stuckFrom, freeingSpeed }: SheetNumbers): string {
  if (built.build.piston.piston.holes.length === 0)
    return 'It has no hole through which a bubble could rise: all must pass at its rim.';
  if (stuckFrom === undefined) return 'The holes are wide enough for every bubble.';
  return `A bubble over ${millimetres(2 * stuckFrom)} stays under the smallest hole while the shaft rests; pulling the shaft out faster than ${roundedText(1e3 * freeingSpeed, 1)} mm/s frees it, pushing it in does not.`;
}

function closingStep({ built, oil, length }: SheetNumbers): ChecklistStep {
  const { position } = built.closing;
  const showing =
    length === undefined || position > length.usableStroke
      ? ' from fully out'
      : `, ${millimetres(shaftExposed(length, position))} showing`;
  const exchange =
    oil.out >= 0
      ? `about ${millilitres(oil.out)} comes out`
      : `top up about ${millilitres(-oil.out)} before the cap goes on`;
  return {
    title: 'Close',
    text: `Goggles on. Cap on with its bleed open or one turn loose, push the shaft in to the stated place, hold it there, close. From pouring to here ${exchange}.`,
    aim: `Shaft ${millimetres(position)} in${showing}`,
    prevents: 'a shaft that creeps out or sucks in, or that locks before the end of its stroke',
    writeIns: [{ label: 'Shaft in', unit: 'mm' }],
  };
}

function bleedSentence({ airLeft, travelPerAir }: SheetNumbers): string {
  const lost = [0, 1, 2, 3].map((bleed) => ((airLeft[bleed] ?? 0) * travelPerAir * 1e3).toFixed(2));
  return `Travel lost to air by the page's assumptions: ${lost[0]} mm before the first bleed, ${lost[1]}, ${lost[2]} and ${lost[3]} mm after the first, second and third; a bleed that wins less than ${worthTravel * 1e3} mm is worth nothing.`;
}
