import { largestBubbleLeft } from '../../lib/fill/air/waiting-time.js';
import type { Figure } from '../../lib/plot/index.js';
import { lineChart } from '../../lib/plot/index.js';
import { duration, millimetres } from '../base/bench-wording.js';
import { celsius } from '../base/wording.js';
import { type BuiltShock, riseSpeedIn } from '../build-sheet/built-shock.js';
import { bubbleRadii } from '../build-sheet/numbers.js';
import { bledAgain } from './later.js';

const longestWait = 1800;
const waitSteps = 40;

/** Largest bubble that can still be in the oil, against the wait. */
export function waitFigure(built: BuiltShock, temperatures: readonly number[], wait: number): Figure {
  const height = built.shock.chamber.length;
  const cases = temperatures.map((temperature) => {
    const riseSpeed = riseSpeedIn(built, temperature);
    const left = (time: number): number =>
      2 * largestBubbleLeft(time, height, riseSpeed, bubbleRadii.largest);
    return { name: celsius(temperature), left };
  });
  const after = cases.map(({ name, left }) => `${millimetres(left(wait))} at ${name}`);
  return lineChart({
    id: 'bubble-left',
    title: 'Largest bubble that can still be in the oil',
    alt: `After ${duration(wait)} upright, the largest bubble left measures ${after.join(', ')}.`,
    x: { label: 'Waited', unit: 'min', dimension: 'time' },
    y: { label: 'Bubble diameter', unit: 'mm', dimension: 'length' },
    series: cases.map(({ name, left }) => ({
      name,
      points: Array.from({ length: waitSteps }, (_, step) => {
        const time = (longestWait * (step + 1)) / waitSteps;
        return { x: time, y: left(time) };
      }),
    })),
    rules: [{ axis: 'x', value: wait, label: 'your wait' }],
  });
}

/** Bleeding again, for a short, the chosen and a long wait. */
export function bleedFigure(built: BuiltShock, temperature: number, wait: number): Figure {
  const cases = [wait / 5, wait, 5 * wait].map((each) => ({
    wait: each,
    travel: bledAgain(built, temperature, each).map(({ travelLost }) => travelLost),
  }));
  const chosen = cases[1]?.travel ?? [];
  const after = [0, 1, 2, 3].map((bleed) => (1e3 * (chosen[bleed] ?? 0)).toFixed(2));
  return lineChart({
    id: 'travel-after-bleeds',
    title: 'Travel lost to air, bleed after bleed',
    alt: `With ${duration(wait)} before each further bleed, ${after[0]} mm of travel lost become ${after[1]}, ${after[2]} and ${after[3]} mm after one, two and three.`,
    x: { label: 'Bleeds after the first', unit: '' },
    y: { label: 'Travel lost while the air passes the piston', unit: 'mm', dimension: 'length' },
    series: cases.map((one) => ({
      name: `${duration(one.wait)} each`,
      points: one.travel.map((travel, bleed) => ({ x: bleed, y: travel })),
    })),
  });
}
