import { choice, onePart, quantity } from '../../lib/page/parameters/declare-parameters.js';
import { bringBack } from '../base/bring-back.js';
import { dropOfWheel } from '../base/drop.js';
import { fastSpeed } from '../base/fast-speed.js';
import { temperature } from '../base/quantities.js';
import { middleSpeed, slowSpeed } from '../base/shaft-speeds.js';

/** What the page asks for. */
export const parameters = {
  build: onePart({
    list: 'builds',
    label: 'You like',
    meaning: 'Build',
    help: 'The build whose damping you want back.',
  }),
  right: quantity({
    ...temperature,
    label: 'Feels right at',
    help: 'Oil temperature at which it feels right, where the parts file says nothing of it.',
    default: 20,
  }),
  piston: onePart({
    list: 'pistons',
    label: 'New piston',
    meaning: 'Piston',
    help: 'The piston that goes in now.',
  }),
  shock: onePart({
    list: 'shocks',
    label: 'New body',
    meaning: 'Shock',
    help: 'The body that it runs in.',
  }),
  now: quantity({
    ...temperature,
    label: 'Oil is now at',
    help: 'Oil temperature of the run to come.',
    default: 35,
    inFile: ({ day }) =>
      day === undefined ? undefined : Math.max(...day.map((reading) => reading.temperature)),
  }),
  back: bringBack,
  drop: dropOfWheel,
  matters: choice({
    label: 'What matters',
    help: 'Which shaft speeds count: slow ones are roll and pitch, fast ones ruts and landings.',
    options: ['all speeds', 'slow', 'fast'],
    default: 'all speeds',
  }),
  slow: slowSpeed,
  middle: middleSpeed,
  fast: fastSpeed,
  needed: quantity({
    dimension: 'volume',
    unit: 'ml',
    label: 'Oil needed',
    help: 'How much to mix.',
    default: 30,
    min: 1,
    max: 1000,
    step: 1,
  }),
  heavier: quantity({
    dimension: 'ratio',
    unit: '%',
    label: 'Heavier by',
    help: 'A heavier car, for the springs and damping that keep its ride.',
    default: 10,
    min: -50,
    max: 100,
    step: 1,
  }),
};
