import { type SpeedWeights, speedRange } from '../../lib/decisions/match/speed-weights.js';
import type { ShaftSpeeds } from '../base/shaft-speeds.js';
import { shaftSpeed } from '../base/wording.js';

/** Which speeds count. */
export type Asked = ShaftSpeeds & { readonly matters: 'all speeds' | 'slow' | 'fast' };

/** Ends of the speeds that count, in compression and in rebound. */
function ends({ matters, slow, middle, fast }: Asked) {
  if (matters === 'slow') return { compression: [slow, middle], rebound: [slow, middle] } as const;
  if (matters === 'fast') return { compression: [middle, fast], rebound: undefined } as const;
  return { compression: [slow, fast], rebound: [slow, middle] } as const;
}

/** Five speeds of each direction that counts; no spring drives a shock out faster than the middle speed. */
export function weightsThatMatter(asked: Asked): SpeedWeights {
  const { compression, rebound } = ends(asked);
  const [from, to] = compression;
  const inward = speedRange(from, to, 5).filter(({ speed }) => speed > 0);
  const outward =
    rebound === undefined ? [] : speedRange(rebound[0], rebound[1], 5).filter(({ speed }) => speed < 0);
  return [...inward, ...outward];
}

/** Those speeds in words. */
export function matterText(asked: Asked): string {
  const { compression, rebound } = ends(asked);
  const range = (name: string, [from, to]: readonly [number, number]) =>
    `${name} from ${shaftSpeed(from)} to ${shaftSpeed(to)}`;
  const outward = rebound === undefined ? '' : ` and ${range('rebound', rebound)}`;
  return `${range('Compression', compression)}${outward} counts, every speed alike.`;
}
