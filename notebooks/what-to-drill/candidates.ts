import { InputError } from '../../lib/base/input-error.js';
import type { DesignProblem } from '../../lib/decisions/design/design-problem.js';
import { integer, quantity } from '../../lib/page/parameters/declare-parameters.js';
import type { ParameterValues } from '../../lib/page/parameters/parameters.js';
import type { Build, OilPart, Parts } from '../../lib/parts/parts.js';
import { runsIn } from '../base/piston-in-bore.js';
import { millimetres } from './naming.js';

const drill = { dimension: 'length', unit: 'mm', min: 0.4, max: 4, step: 0.1 } as const;

/** Which pistons are tried. */
export const candidateParameters = {
  mostHoles: integer({
    label: 'Most holes',
    help: 'How many holes you would drill at most.',
    default: 8,
    min: 1,
    max: 12,
  }),
  smallest: quantity({
    ...drill,
    label: 'Smallest drill',
    help: 'The smallest drill you own.',
    default: 0.8,
  }),
  largest: quantity({ ...drill, label: 'Largest drill', help: 'The largest drill to try.', default: 2 }),
  step: quantity({
    dimension: 'length',
    unit: 'mm',
    label: 'Drill steps',
    help: 'How far apart the drills of your set are.',
    default: 0.1,
    min: 0.05,
    max: 0.5,
    step: 0.05,
  }),
  taper: quantity({
    dimension: 'length',
    unit: 'mm',
    label: 'Taper',
    help: 'How much wider one face may be reamed; 0 for straight holes only.',
    default: 0.2,
    min: 0,
    max: 0.5,
    step: 0.05,
  }),
};

type CandidateValues = ParameterValues<typeof candidateParameters> & { readonly oils: readonly OilPart[] };

/** Designs that a page can work out while a reader waits: about half a second. */
const mostDesigns = 12_000;

/** Every count, drill, taper and thickness to try; thicknesses are those of the pistons in the file that run in the bore. */
export function candidates(
  { pistons }: Parts,
  { shock, piston }: Build,
  { mostHoles, smallest, largest, step, taper, oils }: CandidateValues,
): Pick<DesignProblem, 'counts' | 'drills' | 'tapers' | 'thicknesses'> {
  if (smallest > largest)
    throw new InputError({
      field: 'smallest',
      value: millimetres(smallest),
      accepted: `the largest drill or below, ${millimetres(largest)}`,
    });
  const fitting = pistons.filter((one) => runsIn(one.piston.diameter, shock.bore));
  const thicknesses = [...new Set([piston, ...fitting].map((one) => one.piston.thickness))].sort(
    (a, b) => a - b,
  );
  const counts = Array.from({ length: mostHoles }, (_, index) => index + 1);
  const sizes = Math.floor((largest - smallest) / step + 1e-9) + 1;
  const drills = Array.from({ length: sizes }, (_, index) => Number((smallest + index * step).toFixed(9)));
  const tapers = taper === 0 ? [0] : [-taper, 0, taper];
  const designs = counts.length * drills.length * tapers.length * thicknesses.length * oils.length;
  if (designs > mostDesigns)
    throw new InputError({
      field: 'drills, holes, thicknesses and oils together',
      value: `${designs} designs`,
      accepted: `${mostDesigns} designs at most: fewer oils, wider steps or fewer holes`,
    });
  return { counts, drills, tapers, thicknesses };
}
