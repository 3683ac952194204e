import * as z from 'zod/mini';
import { frictionFromScale } from '../../fill/friction/seal-measurement.js';
import { breakawayRatio, givenSeal, guessedSeal } from '../assembly/seal-interval.js';
import type { SealInterval } from '../shock-part.js';
import { quantityField } from './quantity-field.js';
import { record } from './record.js';
import { report } from './schema-issue.js';

const force = (from: string, example: string, description: string) =>
  quantityField({ dimension: 'force', from, to: '50 N', example, description });

const scaleSchema = record(
  {
    'pushing-in': force('-50 N', '0.55 N', 'Reading while the shaft goes in slowly'),
    'letting-out': force('-50 N', '0.05 N', 'Reading at the same place while it comes out slowly'),
  },
  {
    description: 'Two readings of a scale at one place of the stroke: half their difference is the friction.',
  },
);

/** Friction of the shaft seals, given or measured. */
export const sealSchema = z.pipe(
  record(
    {
      'moving-friction': z.optional(
        force('0 N', '0.3 N', 'Friction of the shaft seals while moving; by default 0.1 N to 1 N, a guess'),
      ),
      'breakaway-friction': z.optional(
        force(
          '0 N',
          '0.45 N',
          'Friction to overcome after rest; by default 1.5 times the moving friction, a guess',
        ),
      ),
      scale: z.optional(scaleSchema),
    },
    { description: 'Friction of the shaft seals: measure it, since no law predicts it for small rings.' },
  ),
  z.transform((entry, payload): SealInterval => {
    const { scale, 'moving-friction': kinetic, 'breakaway-friction': breakaway } = entry;
    if (scale !== undefined && kinetic !== undefined)
      report(payload, ['moving-friction'], 'must be left out where "scale" measures it');
    if (scale !== undefined && scale['letting-out'] > scale['pushing-in']) {
      report(payload, ['scale', 'letting-out'], 'must be at most the reading while pushing in');
      return guessedSeal;
    }
    const measured =
      scale === undefined ? undefined : frictionFromScale(scale['pushing-in'], scale['letting-out']).friction;
    const kineticForce =
      measured ?? kinetic ?? (breakaway === undefined ? undefined : breakaway / breakawayRatio);
    return kineticForce === undefined ? guessedSeal : givenSeal(kineticForce, breakaway);
  }),
);
