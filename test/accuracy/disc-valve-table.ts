import { discValveErrors } from '../reference/disc-valve-reference.js';
import type { Comparison } from './comparison.js';

const errors = discValveErrors();

const line = {
  range: 'four holes, 0.1 and 0.15 mm, 10 to 10 000 mm³/s, no preload',
  source: 'own solutions, film in two dimensions on a plate that stretches',
  obtained: 'computed here',
  test: 'test/reference/disc-valve.test.ts',
  fitted: [],
} as const;

/** Disc valves in the accuracy table; nothing was fitted to their rows. */
export const discValveComparisons: readonly Comparison[] = [
  {
    ...line,
    quantity: 'disc valve, pressure under the disc',
    heldOut: errors.map(({ pressure }) => pressure),
  },
  { ...line, quantity: 'disc valve, load of the oil', heldOut: errors.map(({ load }) => load) },
  {
    ...line,
    quantity: 'disc valve, lift over the holes and at the rim',
    heldOut: errors.flatMap(({ lift, rim }) => [lift, ...rim]),
  },
];

const signed = (error: number): string => {
  const percent = (100 * error).toFixed(1);
  return `${error > 0 && Number(percent) !== 0 ? '+' : ''}${percent.replace('-', '−')} %`;
};

/** Every row of the reference, model over solution, as Markdown. */
export function discValveTable(): string {
  return [
    '| disc | flow | pressure | load | lift over a hole | rim: mean | at a hole | between two |',
    '| --- | --- | --- | --- | --- | --- | --- | --- |',
    ...errors.map(
      ({ thickness, flow, pressure, load, lift, rim }) =>
        `| ${thickness} mm | ${flow} mm³/s | ${[pressure, load, lift, ...rim].map(signed).join(' | ')} |`,
    ),
  ].join('\n');
}
