import { formatQuantity, roundedText } from '../../lib/units/index.js';

/** `38 °C` */
export const celsius = (temperature: number): string => formatQuantity(temperature, 'temperature', '°C', 3);

/** `300 mm/s` */
export const shaftSpeed = (speed: number): string => formatQuantity(speed, 'speed', 'mm/s', 3);

/** `12.3 N` */
export const newtons = (force: number): string => formatQuantity(force, 'force', 'N', 3);

/** `0.35 s` */
export const seconds = (time: number): string => formatQuantity(time, 'time', 's', 3);

/** `45 %`, rounded to whole percent. */
export const percent = (ratio: number): string => `${roundedText(Math.round(100 * ratio), 3)} %`;

/** `a, b and c` */
export function listed(items: readonly string[]): string {
  const last = items.at(-1) ?? '';
  return items.length < 2 ? last : `${items.slice(0, -1).join(', ')} and ${last}`;
}

/** `14:30` */
export function clock(time: number): string {
  const minutes = Math.round(time / 60);
  return `${String(Math.floor(minutes / 60)).padStart(2, '0')}:${String(minutes % 60).padStart(2, '0')}`;
}

/** `7.9 %`, two digits, where whole percent are too coarse. */
export const finePercent = (part: number): string => `${Number((100 * part).toPrecision(2))} %`;
