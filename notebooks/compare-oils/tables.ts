import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import type { Cell } from '../../lib/plot/chart/table.js';
import { oilPoured } from '../base/decision-cases.js';
import { type OilCase, typicalDamping } from '../base/oil-forces.js';
import { celsius, shaftSpeed } from '../base/wording.js';
import type { Conditions } from './figures.js';

/** Force of each oil at three shaft speeds and three temperatures. */
export function forceTable(cases: readonly OilCase[], at: Conditions): TableBlock {
  const columns = [at.slow, at.middle, at.fast].flatMap((speed) =>
    [at.coldest, at.temperature, at.hottest].map((temperature) => ({ speed, temperature })),
  );
  return {
    kind: 'table',
    id: 'forces',
    title: 'Rebound damping of each oil, N',
    note: 'An oil sold by an interval shows its typical value; the band in the pictures is the rest.',
    table: {
      columns: [
        { label: 'Oil', unit: '' },
        ...columns.map(({ speed, temperature }) => ({
          label: `${shaftSpeed(speed)} at ${celsius(temperature)}`,
          unit: 'N',
          dimension: 'force' as const,
        })),
      ],
      rows: cases.map((one): readonly Cell[] => [
        one.part.name,
        ...columns.map(({ speed, temperature }) => -typicalDamping(one, temperature, -speed)),
      ]),
    },
  };
}

/** Millilitres and money for one fill of all shocks of the car. */
export function orderTable(cases: readonly OilCase[], shockCount: number): TableBlock {
  const currencies = [...new Set(cases.flatMap(({ part }) => part.bottle?.price?.currency ?? []))];
  return {
    kind: 'table',
    id: 'order',
    title: `Oil for one fill of ${shockCount} shocks`,
    note: 'An empty cell means that the parts file gives no bottle or no price.',
    table: {
      columns: [
        { label: 'Oil', unit: '' },
        { label: 'Needed', unit: 'ml', dimension: 'volume' },
        { label: 'Bottle', unit: 'ml', dimension: 'volume' },
        { label: 'Fills a bottle gives', unit: '', digits: 2 },
        ...currencies.map((currency) => ({ label: 'Cost of a fill', unit: currency })),
      ],
      rows: cases.map(({ part, shock, piston }): readonly Cell[] => {
        const needed = oilPoured({ shock, piston, oil: part }) * shockCount;
        const { bottle } = part;
        return [
          part.name,
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
