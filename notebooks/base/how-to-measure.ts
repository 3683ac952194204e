import type { Block } from '../../lib/page/index.js';
import { benchSteps } from '../../lib/parts/assembly/bench-steps.js';
import type { KnownOfShock } from '../../lib/parts/index.js';

const measured: Readonly<Record<keyof KnownOfShock, string>> = {
  gas: 'how much gas makes room',
  inside: 'the inside of the body',
  oilVolume: 'how much oil stays',
  closing: 'how the shock was closed',
  seal: 'the friction of the seals',
};

/** Steps at the bench for what the parts file does not say. */
export function howToMeasure(known: KnownOfShock): readonly Block[] {
  return (Object.keys(measured) as (keyof KnownOfShock)[]).flatMap((quantity): Block[] =>
    known[quantity]
      ? []
      : [
          { kind: 'heading', text: `To measure ${measured[quantity]}` },
          { kind: 'list', items: benchSteps(quantity) },
        ],
  );
}
