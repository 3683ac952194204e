import * as z from 'zod/mini';
import { formatQuantity } from '../units/index.js';
import { placeHoles, thinnestWall } from './hole-packing.js';
import type { PistonPart } from './parts.js';
import { countField, nameField, numberField } from './plain-field.js';
import { quantityField } from './quantity-field.js';
import { list, record } from './record.js';
import { report } from './schema-issue.js';

/** Every piston sits on a shaft; where no build says which, one this thin is assumed. */
const thinnestShaft = 1e-3;

const holes = record(
  {
    count: countField(50, { description: 'How many holes of this size.', examples: [2] }),
    diameter: quantityField({
      dimension: 'length',
      from: '0.1 mm',
      to: '10 mm',
      example: '1.7 mm',
      description: 'Diameter of each of these holes',
    }),
  },
  { description: 'Holes of one size.' },
);

const pistonShape = {
  name: nameField({ description: 'Name by which a build refers to this piston.', examples: ['2 x 1.7'] }),
  diameter: quantityField({
    dimension: 'length',
    from: '3 mm',
    to: '40 mm',
    example: '11.95 mm',
    description: 'Outer diameter',
  }),
  thickness: quantityField({
    dimension: 'length',
    from: '0.3 mm',
    to: '20 mm',
    example: '2.5 mm',
    description: 'Thickness of the plate where the holes are: the length of the holes',
  }),
  holes: list(
    holes,
    { description: 'The holes, by size; "[]" for a piston without holes.' },
    { from: 0, to: 20 },
  ),
  'off-centre': z.optional(
    numberField(
      { from: 0, to: 1 },
      {
        description: 'How far the piston stands off the middle of the bore: 0 centred, 1 touching the wall.',
        default: 0,
        examples: [0.5],
      },
    ),
  ),
};

/** A piston with its holes. */
export const pistonSchema = z.pipe(
  record(pistonShape, { description: 'A piston: a plate with holes.' }),
  z.transform((entry, payload): PistonPart => {
    const { name, diameter, thickness, holes } = entry;
    const fault = holesFault(holes, diameter, thinnestShaft);
    if (fault !== undefined) report(payload, ['holes'], fault);
    return { name, piston: { diameter, thickness, holes, eccentricity: entry['off-centre'] ?? 0 } };
  }),
);

/** Says which hole finds no room between the shaft and the rim. */
export function holesFault(
  holes: PistonPart['piston']['holes'],
  diameter: number,
  shaftDiameter: number,
): string | undefined {
  const { left, placed } = placeHoles(holes, diameter, shaftDiameter);
  const [first] = left;
  if (first === undefined) return undefined;
  const millimetres = (value: number): string => formatQuantity(value, 'length', 'mm', 4);
  return (
    `do not fit on the piston: ${placed.length} of ${placed.length + left.length} find room between a shaft of ` +
    `${millimetres(shaftDiameter)} and the rim at ${millimetres(diameter)}, with walls of ` +
    `${millimetres(thinnestWall)}; the first that does not has ${millimetres(first)}`
  );
}
