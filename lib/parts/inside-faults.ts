import { formatQuantity } from '../units/index.js';
import type { ShockPart } from './parts.js';

/** Says where the inside of a body, its compensator and its lengths do not fit together. */
export function insideFaults(shock: ShockPart): readonly (readonly [readonly string[], string])[] {
  const faults: (readonly [readonly string[], string])[] = [];
  const millimetres = (value: number): string => formatQuantity(value, 'length', 'mm', 4);
  const millilitres = (value: number): string => formatQuantity(value, 'volume', 'ml', 4);
  const { bore, compensator, inside, lengths, stroke } = shock;
  if (inside === undefined) return faults;
  const shortest = stroke + (lengths?.innerSpacers ?? 0);
  if (inside.length < shortest)
    faults.push([
      ['inside', 'length'],
      `must be at least the stroke and the droop spacers, ${millimetres(shortest)}, got ${millimetres(inside.length)}`,
    ]);
  const room = (Math.PI / 4) * bore ** 2 * inside.length + inside.capVolume;
  if (inside.solidVolume !== undefined && inside.solidVolume >= room)
    faults.push([
      ['inside', 'solid-volume'],
      `must be less than the inside of ${millilitres(room)}, got ${millilitres(inside.solidVolume)}`,
    ]);
  if (compensator !== undefined && 'volume' in compensator && compensator.volume >= room)
    faults.push([
      ['compensator', 'volume'],
      `must be less than the inside of ${millilitres(room)}, got ${millilitres(compensator.volume)}`,
    ]);
  return faults;
}
