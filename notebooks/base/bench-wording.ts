import { standardGravity } from '../../lib/base/constants.js';
import { formatQuantity, roundedText } from '../../lib/units/index.js';

/** `14.2 mm`, to a tenth as a caliper on a bench. */
export const millimetres = (length: number): string => `${roundedTo(1e3 * length, 1)} mm`;

/** `4.63 ml`, as a syringe. */
export const millilitres = (volume: number): string => `${roundedTo(1e6 * volume, 2)} ml`;

/** `45 g`, what a scale shows for a force. */
export const grams = (force: number): string => `${roundedTo((1e3 * force) / standardGravity, 0)} g`;

/** `12 s`, `3 min` or `2.5 h`: as long as a builder would say it. */
export function duration(time: number): string {
  if (!Number.isFinite(time)) return 'for ever';
  if (time < 10) return `${roundedTo(time, 1)} s`;
  if (time < 120) return `${roundedTo(time, 0)} s`;
  if (time < 5400) return `${roundedTo(time / 60, 0)} min`;
  return formatQuantity(time, 'time', 'h', 2);
}

/** What helps a shock whose oil leaves too little room, in the words of an order; one that is closed fully in cannot be closed further in. */
export function makeRoom(closedAt: number, stroke: number, more = 'give it more gas'): string {
  return closedAt < stroke ? `close it with the shaft further in, or ${more}` : more;
}

function roundedTo(value: number, decimals: number): string {
  const rounded = Number(value.toFixed(decimals));
  return roundedText(rounded === 0 ? 0 : rounded, 12);
}
