import { airPassageTravel } from '../../lib/fill/air/dead-band.js';
import { airAfterBleeds } from '../../lib/fill/air/repeated-bleeding.js';
import { gasPressure } from '../../lib/gas/gas-state.js';
import { standingGas } from '../../lib/gas/standing-gas.js';
import type { TableBlock } from '../../lib/page/index.js';
import { type BuiltShock, damperAt, riseSpeedIn, withFreeAir } from '../build-sheet/built-shock.js';
import { bubbleRadii, drawnInShare } from '../build-sheet/numbers.js';
import { type EndStates, endRow, endStates, endTable, onsetOut } from './habits.js';

/** Bleeds after the first that are followed; what has not left by then will not. */
const moreBleeds = 4;

/** The shock bled again: bubbles left [m³], travel lost to them [m], and what the ends of the stroke do. */
export interface BledAgain extends EndStates {
  readonly freeAir: number;
  readonly travelLost: number;
}

/** The shock as it is closed, and after it was worked, left to stand and bled once more, twice more and so on. */
export function bledAgain(built: BuiltShock, temperature: number, wait: number): readonly BledAgain[] {
  const { freeAir } = built.closing;
  const model = damperAt(built, temperature);
  const airDrawnIn = drawnInShare * freeAir;
  const left = airAfterBleeds(
    {
      // Bleeding again opens the cap, which draws in some air before the wait.
      airAtFill: freeAir + airDrawnIn,
      smallestRadius: bubbleRadii.smallest,
      largestRadius: bubbleRadii.largest,
      height: built.shock.chamber.length,
      wait,
      airDrawnIn,
      riseSpeed: riseSpeedIn(built, temperature),
    },
    moreBleeds,
  );
  return [freeAir, ...left.slice(1)].map((air) => ({
    freeAir: air,
    travelLost: airPassageTravel(model, air),
    ...endStates(withFreeAir(built, air), temperature),
  }));
}

const bleedNames = ['as it is closed', 'bled once more', 'twice more', 'three times more'];

/** What bleeding again changes. */
export function bledAgainTable(bled: readonly BledAgain[]): TableBlock {
  return endTable(
    {
      id: 'bled-again',
      title: 'Worked, left to stand and bled again',
      note: 'Oil takes the place of the bubbles that left: less gas in all, so that pushes and suction grow. "Push" below 0 sucks the shaft in.',
    },
    [
      { label: 'Shock', unit: '' },
      { label: 'Bubbles', unit: 'ml', dimension: 'volume', digits: 2 },
      { label: 'Travel lost', unit: 'mm', dimension: 'length', digits: 2 },
    ],
    bleedNames.flatMap((name, index) => {
      const one = bled[index];
      return one === undefined ? [] : [[name, one.freeAir, one.travelLost, ...endRow(one)]];
    }),
  );
}

/** The shock after it stood for a day or more with its shaft at a place; `undefined` where oil leaves its gas no room there. */
export function stoodAt(built: BuiltShock, temperature: number, position: number): EndStates | undefined {
  const { shock } = built;
  const { shaftArea, closing, chamber } = shock;
  const displacedVolume = shaftArea * position;
  if (shock.gas.closing.displacedVolume + shock.gasVolume <= displacedVolume) return undefined;
  const model = damperAt(built, temperature);
  const slow = standingGas(shock.gas, { displacedVolume, polytropicExponent: 1 });
  const push = (at: number): number | undefined =>
    shaftArea * at >= slow.capacity
      ? undefined
      : shaftArea * (gasPressure(slow, shaftArea * at) - closing.ambientPressure);
  const gas = standingGas(shock.gas, { displacedVolume });
  return {
    pushOut: push(0),
    pushIn: push(chamber.stroke),
    gasOut: slow.capacity > 0 ? gasPressure(slow, 0) : undefined,
    onset: onsetOut({ ...model, gas }),
  };
}

/** What standing changes: air comes out of the oil where the gas is thin, and goes into it where it is squeezed. */
export function stoodTable(built: BuiltShock, temperature: number): TableBlock {
  const { stroke } = built.shock.chamber;
  const rows = [
    { name: 'just closed', states: endStates(built, temperature) },
    { name: 'stood fully out', states: stoodAt(built, temperature, 0) },
    { name: 'stood half way in', states: stoodAt(built, temperature, stroke / 2) },
    { name: 'stood fully in', states: stoodAt(built, temperature, stroke) },
  ];
  return endTable(
    {
      id: 'left-standing',
      title: 'Left standing for a day or more',
      note: 'The oil holds air dissolved. Where the gas is below the pressure outside some comes out, where it is above some goes in (Henry); how long that takes nobody has measured in a shock; hours to days is a guess.',
    },
    [{ label: 'Shock', unit: '' }],
    rows.map(({ name, states }) => [
      name,
      ...(states === undefined ? ['locks', 'locks', null, null, null] : endRow(states)),
    ]),
  );
}
