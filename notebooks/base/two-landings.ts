import type { Block } from '../../lib/page/blocks/block.js';
import { millimetres } from './bench-wording.js';
import { percent } from './wording.js';

/** `0.3 mm further`, `0.3 mm less far`, `as far`: the first against the second. */
export function furtherBy(travel: number, wanted: number): string {
  const difference = travel - wanted;
  if (Math.abs(difference) < 0.5e-4) return 'as far';
  return `${millimetres(Math.abs(difference))} ${difference > 0 ? 'further' : 'less far'}`;
}

/** `7 % harder`, `4 % softer`, `as hard`: the first push against the second. */
export function harderBy(push: number, wanted: number): string {
  const off = percent(Math.abs(push / wanted - 1));
  if (off === percent(0)) return 'as hard';
  return `${off} ${push > wanted ? 'harder' : 'softer'}`;
}

/** Why no landing is told. */
export const noLandingText = (why: string): Block => ({
  kind: 'text',
  text: `How it lands is not told: ${why}.`,
});
