import type { CornerTrace } from './corner-trace.js';

/** Half width of the band in which a corner counts as settled, over its travel at rest. */
const band = 0.05;

/** When a corner came to rest, and how often it swung through its place at rest before. */
export function settling(
  { times, travels }: CornerTrace,
  restTravel: number,
): { readonly settlingTime?: number; readonly swings: number } {
  const width = band * Math.abs(restTravel);
  const away = (i: number): number => (travels[i] as number) - restTravel;
  let last = -1;
  for (let i = travels.length - 1; i >= 0 && last < 0; i--) if (Math.abs(away(i)) > width) last = i;
  let swings = 0;
  for (let i = 1; i <= Math.max(last, 0); i++) if (away(i - 1) * away(i) < 0) swings++;
  if (last === travels.length - 1) return { swings };
  if (last < 0) return { settlingTime: 0, swings };
  const outside = Math.abs(away(last));
  const share = (outside - width) / (outside - Math.abs(away(last + 1)));
  const [before, after] = [times[last] as number, times[last + 1] as number];
  return { settlingTime: before + share * (after - before), swings };
}
