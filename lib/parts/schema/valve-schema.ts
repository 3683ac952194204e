import * as z from 'zod/mini';
import { InputError } from '../../base/input-error.js';
import type { DiscValve } from '../../flow/geometry/disc-valve.js';
import type { Piston } from '../../flow/geometry/piston.js';
import { requireDiscSizes } from '../../flow/valve/disc-units.js';
import { requireDiscPlace } from '../../flow/valve/disc-valve.js';
import { formatQuantity } from '../../units/index.js';
import { choiceField, countField, numberField } from './plain-field.js';
import { quantityField } from './quantity-field.js';
import { list, record } from './record.js';

const size = (from: string, to: string, example: string, description: string) =>
  quantityField({ dimension: 'length', from, to, example, description });

/** A thin disc over some of the holes. */
export const valveSchema = z.pipe(
  record(
    {
      face: choiceField(['shaft-side', 'blind-side'], {
        description: 'Face on which the disc lies; on the shaft side it opens in compression.',
      }),
      covers: list(
        countField(20, { description: 'A hole size of this piston, counted from 1.', examples: [1] }),
        { description: 'Which hole sizes it covers, counted from 1 in the order of "holes".' },
        { from: 1, to: 20 },
      ),
      'outer-diameter': size('1 mm', '40 mm', '10.5 mm', 'Outer diameter'),
      'clamp-diameter': size('1 mm', '40 mm', '5 mm', 'Diameter up to which nut or washer holds it down'),
      thickness: size('0.01 mm', '3 mm', '0.1 mm', 'Thickness of one disc'),
      count: z.optional(
        countField(20, { description: 'How many equal discs lie on each other.', examples: [2] }),
      ),
      'elastic-modulus': quantityField({
        dimension: 'pressure',
        from: '0.1 GPa',
        to: '500 GPa',
        example: '3 GPa',
        description: "Young's modulus: spring steel about 200 GPa, polyester film about 4 GPa",
      }),
      'poisson-ratio': z.optional(
        numberField({ from: 0, to: 0.49 }, { description: "Poisson's ratio.", default: 0.3 }),
      ),
      preload: z.optional(
        size('0 mm', '1 mm', '0.05 mm', 'How far its seat bends it at the holes; by default not at all'),
      ),
      'largest-lift': z.optional(size('0.01 mm', '5 mm', '0.5 mm', 'Lift at which a stop holds it')),
    },
    { description: 'A thin disc that shuts some of the holes in one direction.' },
  ),
  z.transform((entry): DiscValve => {
    const largestLift = entry['largest-lift'];
    return {
      face: entry.face,
      covers: entry.covers.map((number) => number - 1),
      outerDiameter: entry['outer-diameter'],
      clampDiameter: entry['clamp-diameter'],
      thickness: entry.thickness,
      count: entry.count ?? 1,
      elasticModulus: entry['elastic-modulus'],
      poissonRatio: entry['poisson-ratio'] ?? 0.3,
      preload: entry.preload ?? 0,
      ...(largestLift === undefined ? {} : { largestLift }),
    };
  }),
);

const millimetres = (value: number): string => formatQuantity(value, 'length', 'mm', 4);

/** Says what is wrong with a disc, or between it and the holes it covers, or nothing. */
export function valveFault(valve: DiscValve, piston: Piston): readonly [string, string] | undefined {
  try {
    requireDiscSizes(valve, 'valve');
    requireDiscPlace(valve, piston, 'valve');
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return placeWords(error, piston);
  }
  return undefined;
}

/** Says in keys and units of a parts file why a disc does not lie on its holes. */
function placeWords({ field, value, limits }: InputError, piston: Piston): readonly [string, string] {
  const got = typeof value === 'number' ? value : Number.NaN;
  const { above = Number.NaN, below = Number.NaN, to = Number.NaN } = limits;
  switch (field) {
    case 'valve.covers':
      return ['covers', `must name one of the ${piston.holes.length} hole sizes, each once, got ${got + 1}`];
    case 'valve.preload':
      return ['preload', `must be at most the thickness of ${millimetres(to)}, got ${millimetres(got)}`];
    case 'valve.outerDiameter':
      return [
        'outer-diameter',
        `must be more than ${millimetres(above)}, the far edge of its holes, got ${millimetres(got)}`,
      ];
    case 'valve.clampDiameter':
      return [
        'clamp-diameter',
        `must be less than ${millimetres(below)}, the near edge of its holes, got ${millimetres(got)}`,
      ];
    default:
      return ['covers', 'must name hole sizes with one and the same "pitch-circle"'];
  }
}
