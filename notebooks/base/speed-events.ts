import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import type { Build } from '../../lib/parts/parts.js';
import { eventsOf, type InAndOut, landingSpeedOf, landingSpeedSpan } from './driven-speeds.js';
import { dropHeight } from './drop-height.js';
import { landedOrTouched, shaftSpeedsOf } from './fast-speed.js';
import {
  fastestReboundOf,
  roundedFast,
  type ShaftSpeeds,
  speedTemperature,
  springSpeedsOf,
} from './shaft-speeds.js';
import { bumpHeight, bumpLength, bumpSpeed } from './usual-bump.js';
import { celsius, shaftSpeed } from './wording.js';

type Speeds = Partial<ShaftSpeeds>;

const height = `${Math.round(100 * dropHeight)} cm`;
const same = (one: number, other: number): boolean => shaftSpeed(one) === shaftSpeed(other);

/** ` (as fast as its spring lets buggy front out)`, of the first of some builds whose middle speed it is; nothing where a reader chose another speed. */
export function middleEvent(builds: readonly Build[], middle: number): string {
  const build = builds.find((one) => same(springSpeedsOf(one).middle, middle));
  if (build === undefined) return '';
  if (build.spring === undefined) return ` (a guess, since ${build.name} names no spring)`;
  return ` (as fast as its spring lets ${build.name} out)`;
}

/** ` (as fast as buggy front goes in when it lands from 10 cm)`, of the first of some builds whose fast speed it is; nothing where a reader chose another speed. */
export function fastEvent(builds: readonly Build[], fast: number): string {
  const build = builds.find((one) => same(shaftSpeedsOf(one).fast, fast));
  if (build === undefined) return '';
  const { middle } = springSpeedsOf(build);
  if (landedOrTouched(build) < 2 * middle)
    return ` (twice the middle speed, since a landing from ${height} is slower than that)`;
  if (landingSpeedOf(build) === undefined) {
    const guessed = build.corner === undefined ? ', with a guessed motion ratio' : '';
    const why =
      build.spring === undefined
        ? 'with a spring in the file it is that of the landing'
        : `${build.name} does not land on its spring and gas`;
    return ` (the touch of a landing from ${height} on a stiff tyre${guessed}; ${why})`;
  }
  const span = landingSpeedSpan(build);
  const guess =
    span === undefined
      ? ''
      : `; ${shaftSpeed(roundedFast(span.low))} to ${shaftSpeed(roundedFast(span.high))}, since what the car weighs and its motion ratio are guesses`;
  return ` (as fast as ${build.name} goes in when it lands from ${height}${guess})`;
}

/** What the speeds of a page are, as a sentence; those that a reader chose by hand are numbers only. */
export function speedsSentence(builds: readonly Build[], { slow, middle, fast }: Speeds): string {
  const all = [
    ...(slow === undefined ? [] : [`slow is ${shaftSpeed(slow)}`]),
    ...(middle === undefined ? [] : [`middle is ${shaftSpeed(middle)}${middleEvent(builds, middle)}`]),
    ...(fast === undefined ? [] : [`fast is ${shaftSpeed(fast)}${fastEvent(builds, fast)}`]),
  ].join('; ');
  return `${all.charAt(0).toUpperCase()}${all.slice(1)}.`;
}

/** How fast a build is driven, and by what; nothing where it names no spring or cannot land. */
export function eventsTable(build: Build | undefined): readonly TableBlock[] {
  const events = build && eventsOf(build);
  if (build === undefined || events === undefined) return [];
  const { landed, bumped } = events;
  const temperature = speedTemperature(build);
  const row = (name: string, driven: InAndOut) => [name, driven.in, driven.out];
  const falls = [...(landed.freely ? ['landing'] : []), ...(bumped.freely ? ['bump'] : [])];
  return [
    {
      kind: 'table',
      id: 'driven',
      title: `How fast ${build.name} is driven on ${build.oil.name} at ${celsius(temperature)}, and by what`,
      note: [
        'The fastest on the way in and out.',
        ...(falls.length === 0
          ? []
          : [
              `After the ${falls.join(' and the ')} it comes out fastest through a cavity that the way in left, where nothing holds it back.`,
            ]),
        build.corner === undefined
          ? 'Tyre and wheel are guesses, and so is what the car weighs.'
          : 'Tyre and wheel are guesses.',
      ].join(' '),
      table: {
        columns: [
          { label: 'What drives it', unit: '' },
          { label: 'In', unit: 'mm/s', dimension: 'speed' },
          { label: 'Out', unit: 'mm/s', dimension: 'speed' },
        ],
        rows: [
          row(`Landing from ${height}`, landed),
          row(`Bump ${1000 * bumpHeight} mm high, ${1000 * bumpLength} mm long, at ${bumpSpeed} m/s`, bumped),
          ['Its spring alone, from all the way in', null, fastestReboundOf(build, temperature) ?? null],
        ],
      },
    },
  ];
}
