import * as z from 'zod/mini';
import { InputError } from '../../base/input-error.js';
import { largestEccentricity } from '../../flow/gap/annular-gap.js';
import { requireHolePitch } from '../../flow/hole/hole-pitch.js';
import { mouthWidth } from '../../flow/hole/hole-shape.js';
import { formatQuantity } from '../../units/index.js';
import type { PistonPart } from '../parts.js';
import { holeShapeFault } from './hole-fault.js';
import { placeHoles, thinnestWall } from './hole-packing.js';
import { holeSchema } from './hole-schema.js';
import { nameField, numberField } from './plain-field.js';
import { quantityField } from './quantity-field.js';
import { list, record } from './record.js';
import { report } from './schema-issue.js';
import { valveFault, valveSchema } from './valve-schema.js';

/** Every piston sits on a shaft; where no build says which, one this thin is assumed. */
const thinnestShaft = 1e-3;

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
    holeSchema,
    { description: 'The holes, by size; "[]" for a piston without holes.' },
    { from: 0, to: 20 },
  ),
  'off-centre': z.optional(
    numberField(
      { from: 0, to: largestEccentricity },
      {
        description:
          'How far the piston stands off the middle of the bore: 0 centred, 0.99 all but touching the wall.',
        default: 0,
        examples: [0.5],
      },
    ),
  ),
  valves: z.optional(
    list(valveSchema, { description: 'Thin discs over some of the holes.' }, { from: 1, to: 4 }),
  ),
};

/** A piston with its holes. */
export const pistonSchema = z.pipe(
  record(pistonShape, { description: 'A piston: a plate with holes.' }),
  z.transform((entry, payload): PistonPart => {
    const { name, diameter, thickness, holes, valves } = entry;
    const fault = holesFault(holes, diameter, thinnestShaft);
    if (fault !== undefined) report(payload, ['holes'], fault);
    holes.forEach((group, index) => {
      const shape = holeShapeFault(group, thickness);
      if (shape !== undefined) report(payload, ['holes', index, ...shape[0]], shape[1]);
    });
    const plain = { diameter, thickness, holes, eccentricity: entry['off-centre'] ?? 0 };
    const pitch = pitchFault(plain);
    if (pitch !== undefined) report(payload, ['holes'], pitch);
    if (valves === undefined) return { name, piston: plain };
    valves.forEach((valve, index) => {
      const disc = valveFault(valve, plain);
      if (disc !== undefined) report(payload, ['valves', index, disc[0]], disc[1]);
    });
    return { name, piston: { ...plain, valves } };
  }),
);

/** Says where holes on one pitch circle overlap or break through the rim, or nothing. */
function pitchFault(piston: PistonPart['piston']): string | undefined {
  try {
    requireHolePitch(piston);
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const rim = typeof error.value === 'number';
    return rim
      ? 'break through the rim: the "pitch-circle" is too large'
      : `overlap on their "pitch-circle": ${String(error.value)}`;
  }
  return undefined;
}

/** Says which hole finds no room between the shaft and the rim. */
export function holesFault(
  holes: PistonPart['piston']['holes'],
  diameter: number,
  shaftDiameter: number,
): string | undefined {
  const { left, placed } = placeHoles(
    holes.map((group) => ({ count: group.count, diameter: mouthWidth(group) })),
    diameter,
    shaftDiameter,
  );
  const [first] = left;
  if (first === undefined) return undefined;
  const millimetres = (value: number): string => formatQuantity(value, 'length', 'mm', 4);
  return (
    `do not fit on the piston: ${placed.length} of ${placed.length + left.length} find room between a shaft of ` +
    `${millimetres(shaftDiameter)} and the rim at ${millimetres(diameter)}, with walls of ` +
    `${millimetres(thinnestWall)}; the first that does not has ${millimetres(first)}`
  );
}
