import { cavitationOnset } from '../../lib/damper/cavitation-onset.js';
import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import type { Cell, Column } from '../../lib/plot/chart/table.js';
import { formatQuantity } from '../../lib/units/index.js';
import { strokeForces, strokeOf } from '../base/after-onset.js';
import { modelsOf } from '../base/chosen-shock.js';
import { knownShock } from '../base/known.js';
import { oilPoured } from '../base/oil-poured.js';
import { fastestReboundOf } from '../base/shaft-speeds.js';
import { celsius, shaftSpeed } from '../base/wording.js';
import { type Conditions, holdsBack, type OilInShock } from './oils.js';
import { lossFromColdToHot } from './reading.js';

const force = (label: string): Column => ({ label, unit: 'N', dimension: 'force' });
const speedOf = (label: string): Column => ({ label, unit: 'mm/s', dimension: 'speed' });
const interval = 'An oil sold by an interval shows its typical value; the band in the pictures is the rest.';

/** Force of each oil at three shaft speeds that happen; the sentence says what they are. */
export function forceTable(oils: readonly OilInShock[], at: Conditions, speeds: string): TableBlock {
  const [first] = oils;
  const travel =
    first === undefined ? 0 : strokeOf(modelsOf(first.build, at.temperature).model, at.fast).travel;
  return {
    kind: 'table',
    id: 'forces',
    title: `Damping of each oil at ${celsius(at.temperature)}`,
    note: `${speeds} ${interval} Pushed in from fully out, after ${formatQuantity(travel, 'length', 'mm', 2)} at that speed.${gasGuess(first)}`,
    table: {
      columns: [
        { label: 'Oil', unit: '' },
        force('Rebound, slow'),
        force('Rebound, middle'),
        force('Pushed in, fast'),
      ],
      rows: oils.map((oil): readonly Cell[] => [
        oil.name,
        holdsBack(oil, at.temperature, at.slow).typical,
        holdsBack(oil, at.temperature, at.middle).typical,
        strokeForces(modelsOf(oil.build, at.temperature).model, at.fast).afterTravel.dampingForce,
      ]),
    },
  };
}

/** Said where the force after a travel rests on a gas that nobody measured. */
function gasGuess(first: OilInShock | undefined): string {
  if (first === undefined || knownShock(first.build).known.gas) return '';
  return ' How much gas makes room for the shaft is a guess, and so is that force.';
}

/** What the day does to each oil. */
export function dayTable(oils: readonly OilInShock[], at: Conditions): TableBlock {
  return {
    kind: 'table',
    id: 'day',
    title: `Rebound damping at ${shaftSpeed(at.middle)}, cold and hot`,
    note: interval,
    table: {
      columns: [
        { label: 'Oil', unit: '' },
        force(celsius(at.coldest)),
        force(celsius(at.hottest)),
        { label: 'Lost', unit: '%', dimension: 'ratio', digits: 2 },
      ],
      rows: oils.map((oil): readonly Cell[] => [
        oil.name,
        holdsBack(oil, at.coldest, at.middle).typical,
        holdsBack(oil, at.hottest, at.middle).typical,
        lossFromColdToHot(oil, at.coldest, at.hottest, at.middle),
      ]),
    },
  };
}

/** Where each oil begins to cavitate, and how fast the spring lets it out. */
export function speedTable(oils: readonly OilInShock[], { temperature }: Conditions): TableBlock {
  return {
    kind: 'table',
    id: 'speeds',
    title: `What thicker oil does to speeds, at ${celsius(temperature)}`,
    note: `Pushed in with the shaft fully out, and let out by the spring from all the way in. An empty cell means that nothing cavitates in compression, or that the file names no spring.${sealGuess(oils[0])}`,
    table: {
      columns: [
        { label: 'Oil', unit: '' },
        speedOf('Cavitates from'),
        force('Damping there'),
        speedOf('Spring lets it out at'),
      ],
      rows: oils.map(({ name, build }): readonly Cell[] => {
        const onset = cavitationOnset(modelsOf(build, temperature).model, 'compression', 0);
        return [
          name,
          onset?.speed ?? null,
          onset?.dampingForce ?? null,
          fastestReboundOf(build, temperature) ?? null,
        ];
      }),
    },
  };
}

/** Said where the friction that holds the spring back is a guess. */
function sealGuess(first: OilInShock | undefined): string {
  if (first?.build.spring === undefined || first.build.shock.seal.measured) return '';
  return ' The friction of the seals, which takes some of that speed, is a guess.';
}

/** Millilitres and money for one fill of all shocks of this body. */
export function orderTable(oils: readonly OilInShock[]): TableBlock {
  const currencies = [...new Set(oils.flatMap(({ build }) => build.oil.bottle?.price?.currency ?? []))];
  const [first] = oils;
  const count = first?.build.quantity ?? 1;
  const known = first !== undefined && knownShock(first.build).known.oilVolume;
  const guess = known
    ? ''
    : ' How much oil goes into it is a guess: the file has neither its inside nor its oil.';
  return {
    kind: 'table',
    id: 'order',
    title: `Oil to pour for one fill of ${count === 1 ? 'one shock' : `${count} shocks`}`,
    note: `Of the body ${first?.build.shock.name ?? ''}. An empty cell means that the parts file gives no bottle or no price.${guess}`,
    table: {
      columns: [
        { label: 'Oil', unit: '' },
        { label: 'Needed', unit: 'ml', dimension: 'volume' },
        { label: 'Bottle', unit: 'ml', dimension: 'volume' },
        { label: 'Fills a bottle gives', unit: '', digits: 2 },
        ...currencies.map((currency) => ({ label: 'Cost of a fill', unit: currency })),
      ],
      rows: oils.map(({ name, build }): readonly Cell[] => {
        const needed = oilPoured(build) * count;
        const { bottle } = build.oil;
        return [
          name,
          needed,
          bottle?.volume ?? null,
          bottle === undefined ? null : Math.floor(bottle.volume / needed),
          ...currencies.map((currency) =>
            bottle?.price?.currency === currency ? (bottle.price.amount * needed) / bottle.volume : null,
          ),
        ];
      }),
    },
  };
}
