import { fitQuality } from '../../lib/measure/answer/fit-quality.js';
import type { ShockFit } from '../../lib/measure/fit/fit-shock.js';
import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { finePercent, shaftSpeed } from '../base/wording.js';
import type { DynoGroup } from './dyno-groups.js';

/** Standard uncertainties that a group of speeds may be off before the page calls it so. */
const clearlyOff = 3;
/** Below this no order of the signs matters. */
const visiblyOff = 2;
/** A single force so many standard uncertainties off is odd. */
const odd = 4;
/** A chance of the order of signs below which it is none. */
const unlikelyOrder = 0.01;

const wayWords = { in: 'going in', out: 'coming out' } as const;

const off = ({ read, fitted, uncertainty }: DynoGroup): number => (read - fitted) / uncertainty;

/** `6.1 % more`, of what was read against the fitted shock. */
function moreOrLess(read: number, fitted: number): string {
  const share = read / fitted - 1;
  return `${finePercent(Math.abs(share))} ${share > 0 ? 'more' : 'less'}`;
}

/** Where the dyno and the fitted shock are farthest apart, and whether that says anything. */
function farthestSentence(groups: readonly DynoGroup[]): string {
  const worst = groups.reduce((one, other) => (Math.abs(off(other)) > Math.abs(off(one)) ? other : one));
  const where = `at ${shaftSpeed(worst.speed)} ${wayWords[worst.way]}`;
  const difference = `${moreOrLess(worst.read, worst.fitted)} damping than the fitted shock has`;
  return Math.abs(off(worst)) < clearlyOff
    ? `The dyno and the fitted shock go together at every speed; farthest apart, ${where}, the dyno shows ${difference}, within its doubt.`
    : `The dyno and the fitted shock do not go together at every speed: ${where} the dyno shows ${difference}, ${Math.abs(off(worst)).toFixed(1)} standard uncertainties.`;
}

/** How far the faster half of one way is off, as a part of the damping, and how sure that is. */
function fasterHalf(groups: readonly DynoGroup[], way: DynoGroup['way']) {
  const own = groups.filter((group) => group.way === way);
  const fast = own.slice(Math.floor(own.length / 2));
  const samples = fast.reduce((sum, group) => sum + group.samples, 0);
  const share = (of: (group: DynoGroup) => number): number =>
    fast.reduce((sum, group) => sum + group.samples * of(group), 0) / samples;
  const squares = fast.reduce(
    (sum, group) => sum + ((group.samples * group.uncertainty) / group.fitted) ** 2,
    0,
  );
  return {
    none: samples === 0,
    off: share(({ read, fitted }) => read / fitted - 1),
    deviation: Math.sqrt(squares) / samples,
  };
}

/** Whether one way differs from the other more than in the fitted shock. The slow half of a stroke would not tell: zero and gas take it up. */
function waysSentence(groups: readonly DynoGroup[]): string {
  const [inward, outward] = [fasterHalf(groups, 'in'), fasterHalf(groups, 'out')];
  if (inward.none || outward.none) {
    const one = inward.none ? 'coming out' : 'going in';
    return `The record has forces ${one} only; what the shock does the other way is the law’s word.`;
  }
  const telling =
    Math.abs(inward.off - outward.off) > clearlyOff * Math.hypot(inward.deviation, outward.deviation);
  const said = `in the faster half of its speeds the dyno shows ${moreOrLess(1 + inward.off, 1)} going in and ${moreOrLess(1 + outward.off, 1)} coming out than fitted`;
  return telling
    ? `The two ways differ by more than those of the fitted shock: ${said}. A piston that is not the same both ways or cavitation can do that.`
    : `Both ways agree with one shock: ${said}.`;
}

/** Forces far off all others: shown, and kept. */
function oddSentences({ problem, residuals }: ShockFit): readonly string[] {
  const far = residuals.flatMap(({ reading, standardised }) => {
    const of = problem.readings[reading];
    return of?.kind === 'force' && Math.abs(standardised) > odd ? [of] : [];
  });
  const [first] = far;
  if (first === undefined) return [];
  const where = `at ${shaftSpeed(Math.abs(first.speed))} ${wayWords[first.speed > 0 ? 'in' : 'out']}`;
  const count = far.length === 1 ? 'One force of the dyno is' : `${far.length} forces of the dyno are`;
  return [
    `${count} more than ${odd} standard uncertainties off (${far.length === 1 ? '' : 'the first '}${where}): kept, and counted in full.`,
  ];
}

/** What the record of a dyno says of the fit, in words; nothing without a dyno. */
export function dynoSentences(fit: ShockFit, groups: readonly DynoGroup[]): readonly string[] {
  if (groups.length === 0) return [];
  const { runsChance } = fitQuality(fit);
  // A misfit far below the sensor's doubt may well have an order; it says nothing that matters.
  const seen = groups.some((group) => Math.abs(off(group)) > visiblyOff);
  const bent =
    seen && runsChance !== undefined && runsChance < unlikelyOrder
      ? [
          `From slow to fast the fitted shock is off one way, then the other (by chance 1 time in ${Math.round(1 / Math.max(runsChance, 1e-6))}): the curve bends otherwise than the law.`,
        ]
      : [];
  return [farthestSentence(groups), waysSentence(groups), ...bent, ...oddSentences(fit)];
}

/** The dyno against the fitted shock, group by group; nothing without a dyno. */
export function dynoTables(groups: readonly DynoGroup[]): readonly TableBlock[] {
  if (groups.length === 0) return [];
  return [
    {
      kind: 'table',
      id: 'dyno',
      title: 'What the dyno shows, against the fitted shock',
      table: {
        columns: [
          { label: 'Way', unit: '' },
          { label: 'Shaft speed', unit: 'mm/s', dimension: 'speed' },
          { label: 'Damping on the dyno', unit: 'N', dimension: 'force' },
          { label: 'Fitted', unit: 'N', dimension: 'force' },
          { label: 'Dyno more by', unit: '%', dimension: 'ratio', digits: 2 },
          { label: 'Off by', unit: 'standard uncertainties', digits: 2 },
          { label: 'Forces', unit: '' },
        ],
        rows: groups.map((group) => [
          wayWords[group.way],
          group.speed,
          group.read,
          group.fitted,
          group.read / group.fitted - 1,
          off(group),
          group.samples,
        ]),
      },
      note: 'Means of neighbouring speeds, without gas, friction and the zero of the sensor as fitted.',
    },
  ];
}
