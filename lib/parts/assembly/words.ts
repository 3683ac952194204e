import { formatQuantity } from '../../units/index.js';

/** `0.9 ml` */
export const millilitres = (volume: number): string => formatQuantity(volume, 'volume', 'ml', 3);

/** `14 mm` */
export const millimetres = (length: number): string => formatQuantity(length, 'length', 'mm', 4);

/** `fully out`, `14 mm in` */
export function placeWords(position: number, stroke: number): string {
  if (position === 0) return 'fully out';
  return position === stroke ? 'fully in' : `${millimetres(position)} in`;
}
