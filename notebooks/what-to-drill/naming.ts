import type { Drilled } from '../../lib/decisions/design/drilled-damper.js';
import { formatQuantity } from '../../lib/units/index.js';

/** `1.4 mm` */
export const millimetres = (length: number): string => formatQuantity(length, 'length', 'mm', 3);

/** `5 holes of 1.4 mm`, `one hole of 0.9 mm, reamed to 1.1 mm at the shaft side` */
export function holesText({ count, drill, taper }: Drilled): string {
  const narrow = millimetres(drill - Math.abs(taper) / 2);
  const holes = `${count === 1 ? 'one hole' : `${count} holes`} of ${narrow}`;
  if (taper === 0) return holes;
  const wide = millimetres(drill + Math.abs(taper) / 2);
  return `${holes}, reamed to ${wide} at the ${taper > 0 ? 'shaft' : 'blind'} side`;
}

/** `5 × 1.4 mm`, `5 × 1.3 mm, shaft side 1.5 mm` */
export function holesShort({ count, drill, taper }: Drilled): string {
  const holes = `${count} × ${millimetres(drill - Math.abs(taper) / 2)}`;
  if (taper === 0) return holes;
  return `${holes}, ${taper > 0 ? 'shaft' : 'blind'} side ${millimetres(drill + Math.abs(taper) / 2)}`;
}
