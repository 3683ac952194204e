import { standardGravity } from '../../lib/base/constants.js';
import { shockLength } from '../../lib/fill/length/shock-length.js';
import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { lengthsOf } from '../../lib/parts/assembly/lengths-of.js';
import { formatQuantity } from '../../lib/units/index.js';
import { grams, millilitres, millimetres } from '../base/bench-wording.js';
import { type Span, spanText } from '../base/span.js';
import { celsius, finePercent, newtons, percent, shaftSpeed } from '../base/wording.js';
import { landedWords } from '../landing/words.js';
import { type Conditions, coefficientAt, dampingAt, type Side } from './sides.js';

type Two = readonly [Side, Side];
type Row = readonly [string, ...string[]];

function tableOf(id: string, title: string, two: Two, rows: readonly Row[], note?: string): TableBlock {
  return {
    kind: 'table',
    id,
    title,
    ...(note === undefined ? {} : { note }),
    table: {
      columns: ['Compared', ...two.map(({ build }) => build.name), 'Second over first'].map((label) => ({
        label,
        unit: '',
      })),
      rows: rows.map((row) => (row.length === 3 ? [...row, ''] : row)),
    },
  };
}

/** `+12 %`, the second over the first less one; nothing where there is no ratio. */
export function overFirst(first: number, second: number): string {
  // A thousand times and more is no comparison, but a value that is all but nothing.
  if (!(first > 0 && second > 0 && second / first < 1000 && first / second < 1000)) return '';
  const part = second / first - 1;
  if (Math.abs(part) < 0.0005) return 'same';
  return `${part > 0 ? '+' : '−'}${finePercent(Math.abs(part))}`;
}

function spans(label: string, two: Two, of: (side: Side) => Span, shown: (value: number) => string): Row {
  const [first, second] = two.map(of) as unknown as readonly [Span, Span];
  return [label, spanText(first, shown), spanText(second, shown), overFirst(first.typical, second.typical)];
}

/** Damping at the three speeds, both ways. */
export function forceTable(two: Two, { slow, middle, fast, temperature }: Conditions): TableBlock {
  const row = (label: string, speed: number): Row =>
    spans(`${label}, ${shaftSpeed(Math.abs(speed))}`, two, (side) => dampingAt(side, speed), newtons);
  return tableOf(
    'forces',
    `Damping of each at ${celsius(temperature)}`,
    two,
    [
      row('Pushed in', slow),
      row('Pushed in', middle),
      row('Pushed in', fast),
      row('Rebound', -slow),
      row('Rebound', -middle),
    ],
    'In brackets what the label of an oil leaves open. Where a cavity opens, the force after the travel that the picture names. No spring drives a shock out at the fast speed.',
  );
}

const onScale = (push: number | undefined): string => (push === undefined ? 'locks' : grams(push));

/** Pushes of the gas at rest and the friction of the seals, as a scale shows them. */
export function pushTable(two: Two): TableBlock {
  const of = (label: string, push: (side: Side) => number | undefined): Row => {
    const [first, second] = two.map((side) => onScale(push(side)));
    return [label, first ?? '', second ?? ''];
  };
  const [warm, other] = two.map(({ built }) => celsius(built.closing.temperature));
  const guess = two.some(({ built }) => !built.assembled.known.gas)
    ? ' Where the file does not say how much gas there is, its push is a guess.'
    : '';
  const seal = ({ built }: Side): Span => {
    const { low, typical, high } = built.assembled.seal;
    const force = (one: typeof low) => (1e3 * one.kineticForce) / standardGravity;
    return { typical: force(typical), low: force(low), high: force(high) };
  };
  return tableOf(
    'push',
    `Static push, no spring, ${warm === other ? `at ${warm}` : `each as warm as it was closed, ${warm} and ${other}`}`,
    two,
    [
      of('Shaft fully in', ({ states }) => states().pushIn),
      of('Shaft fully out', ({ states }) => states().pushOut),
      spans('Friction of the seals', two, seal, (value) => `${Math.round(value)} g`),
    ],
    `Below 0 the shaft is sucked in. Brackets at the friction mark a guess.${guess}`,
  );
}

const hertz = (value: number): string => `${value.toPrecision(3)} Hz`;
const ratioText = (value: number): string => value.toPrecision(2);

/** How each corner stands and swings. */
export function rideTable(two: Two, { slow, middle, sag, temperature }: Conditions): TableBlock {
  const cell = (of: (side: Side & { riding: NonNullable<Side['riding']> }) => string) =>
    two.map((side) => {
      const { riding } = side;
      if (riding !== undefined) return of({ ...side, riding });
      return side.build.spring === undefined ? 'add its spring' : 'locks before';
    });
  const ridden = (
    label: string,
    of: (riding: NonNullable<Side['riding']>, side: Side) => Span,
    shown: (value: number) => string,
  ): Row => {
    const [first = '', second = ''] = cell((side) => spanText(of(side.riding, side), shown));
    const both = two.map((side) => (side.riding === undefined ? Number.NaN : of(side.riding, side).typical));
    const [one = Number.NaN, other = Number.NaN] = both;
    return [label, first, second, shown === millimetres ? '' : overFirst(one, other)];
  };
  const text = (label: string, of: (side: Side) => string): Row => {
    const [first, second] = two.map(of);
    return [label, first ?? '', second ?? ''];
  };
  return tableOf(
    'ride',
    `At rest and swinging, at ${celsius(temperature)}`,
    two,
    [
      ridden('Shaft in, collar just touching', ({ untouched }) => untouched, millimetres),
      text(`Shaft wanted in, ${percent(sag)}`, ({ place }) => millimetres(place)),
      ridden('Collar must press', ({ collar }) => collar, millimetres),
      ridden('Spring is then long', ({ springLength }) => springLength, millimetres),
      ridden(
        'Friction holds within, either way',
        ({ friction }) => ({ typical: friction, low: friction, high: friction }),
        millimetres,
      ),
      text('Wheel can drop from there', ({ build, place }) =>
        build.corner === undefined ? 'add its corner' : millimetres(place / build.corner.motionRatio),
      ),
      text('Eyelet to eyelet there', eyelets),
      ridden('Ride frequency', ({ frequency }) => frequency, hertz),
      ridden(
        `Damping ratio, rebound ${shaftSpeed(slow)}`,
        ({ ratio }, side) => ratio(coefficientAt(side, slow)),
        ratioText,
      ),
      ridden(
        `Damping ratio, rebound ${shaftSpeed(middle)}`,
        ({ ratio }, side) => ratio(coefficientAt(side, middle)),
        ratioText,
      ),
    ],
    'Brackets mark a guess: the file says no mass and no motion ratio of that corner. A collar below 0 is one that is backed off, with the spring loose by that much as the wheel hangs. The tyre is taken as stiff.',
  );
}

function eyelets({ build, place }: Side): string {
  const lengths = lengthsOf(build.shock, build.piston);
  return lengths === undefined ? 'add its lengths' : millimetres(shockLength(lengths).extended - place);
}

/** The same drop for both, as the page of landings has it. */
export function landingTable(two: Two, { drop, temperature }: Conditions): TableBlock {
  const row = (label: string, of: (words: ReturnType<typeof landedWords>) => string): Row => {
    const [first, second] = two.map(({ build, landed }) => {
      if (landed !== undefined) return of(landedWords(landed.own, landed.ends));
      return build.spring === undefined ? 'add its spring' : 'locks on the way';
    });
    return [label, first ?? '', second ?? ''];
  };
  return tableOf(
    'landing',
    `Dropped ${millimetres(drop)} at ${celsius(temperature)}`,
    two,
    [
      row('Goes in', ({ travel }) => travel),
      row('Bump stop', ({ stop }) => stop),
      row('Shock pushes at most', ({ push }) => push),
      row('Body feels', ({ felt }) => felt),
    ],
    'From the page of landings, collar just touching; the range is what air in the oil leaves open.',
  );
}

/** What cold and heat and a fill come to. */
export function dayTable(two: Two, { coldest, hottest, middle }: Conditions): TableBlock {
  const money = ({ cost, build }: Side): string => {
    if (cost !== undefined) return `${cost.amount.toFixed(2)} ${cost.currency}`;
    return build.oil.bottle === undefined ? 'add its bottle' : 'add its price';
  };
  const [first, second] = two;
  const alike = first.cost?.currency === second.cost?.currency;
  return tableOf('day', 'Cold, hot, and a fill', two, [
    spans(`Rebound ${shaftSpeed(middle)} at ${celsius(coldest)}`, two, ({ cold }) => cold(), newtons),
    spans(`Rebound ${shaftSpeed(middle)} at ${celsius(hottest)}`, two, ({ hot }) => hot(), newtons),
    [
      'Lost from cold to hot',
      ...two.map(({ cold, hot }) => finePercent(1 - hot().typical / cold().typical)),
    ] as unknown as Row,
    [
      'Oil for a fill',
      ...two.map(
        ({ poured, build }) =>
          `${millilitres(poured)} for ${build.quantity === 1 ? 'one shock' : `${build.quantity} shocks`}`,
      ),
    ] as unknown as Row,
    [
      'Cost of a fill',
      money(first),
      money(second),
      alike ? overFirst(first.cost?.amount ?? 0, second.cost?.amount ?? 0) : '',
    ],
  ]);
}

/** Springs side by side. */
export function partsTable(two: Two): TableBlock {
  const row = (label: string, of: (side: Side) => string): Row => {
    const [first, second] = two.map(of);
    return [label, first ?? '', second ?? ''];
  };
  return tableOf('parts', 'What they are made of', two, [
    row('Shock', ({ build }) => build.shock.name),
    row('Piston', ({ build }) => build.piston.name),
    row('Oil', ({ build }) => build.oil.name),
    row('Spring', ({ build: { spring } }) =>
      spring === undefined
        ? 'add its spring'
        : `${spring.name}, ${formatQuantity(spring.rate, 'springRate', 'N/mm', 3)}`,
    ),
  ]);
}
