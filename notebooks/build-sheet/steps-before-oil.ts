import { standardGravity } from '../../lib/base/constants.js';
import { lengthMismatch } from '../../lib/fill/length/shock-length.js';
import type { ChecklistStep } from '../../lib/page/index.js';
import { formatQuantity } from '../../lib/units/index.js';
import { grams, millimetres } from '../base/bench-wording.js';
import type { Choices, SheetNumbers } from './numbers.js';

/** `1.70 mm`, as a drill shank is marked. */
const hundredths = (length: number): string => `${(1e3 * length).toFixed(2)} mm`;

/** Steps of a build until the oil goes in. */
export function stepsBeforeOil(numbers: SheetNumbers, choices: Choices): readonly ChecklistStep[] {
  const { shock, piston } = numbers.built.build;
  const holes = piston.piston.holes.map(({ count, diameter }) => `${count} × ${hundredths(diameter)}`);
  return [
    {
      title: 'Strip and inspect',
      text: 'Take the spring off in a guarded press, let any pressure out, wash and dry all parts. Roll the shaft on glass and draw a fingernail along it.',
      aim: `Shaft ${hundredths(shock.shaftDiameter)}, all along`,
      prevents: 'a leak at a scratch, and a bent shaft that sticks',
      writeIns: [{ label: 'Thinnest', unit: 'mm' }],
    },
    {
      title: 'Deburr the piston',
      text: 'Turn a larger drill between the fingers at each mouth, only until the edge no longer catches. Try each hole with the shank of its drill and with the next larger.',
      aim: holes.length === 0 ? 'No holes' : holes.join(', '),
      prevents: 'unlike damping left and right, and a piston that scratches the bore',
      writeIns: [{ label: 'Largest shank', unit: 'mm' }],
    },
    {
      title: 'Try the piston in the bore',
      text: 'Dry, without seals, it must fall through under its own weight and not tip.',
      aim: `Gap ${formatQuantity((shock.bore - piston.piston.diameter) / 2, 'length', 'mm', 2)} all round`,
      prevents: 'shaft friction, and oil that slips past the rim',
      writeIns: [{ label: 'Piston', unit: 'mm' }],
    },
    {
      title: 'Seals',
      text: 'New rings, wetted with the oil of this build or what their maker names. Cover the thread of the shaft with thin tube as it passes through them.',
      prevents: 'a ring cut on the thread, which leaks and drags',
      writeIns: [{ label: 'Rings fitted', unit: '' }],
    },
    {
      title: 'Friction without oil',
      text: 'Tape the rod end to a weight on a scale and set it to zero. Move the body down slowly, read; up slowly, read at the same place. Half the difference is the friction; the highest reading as it starts to move is the breakaway.',
      aim: frictionAim(numbers),
      prevents: 'a sticky shock that parks the car at a different height each time',
      writeIns: [
        { label: 'Body down', unit: 'g' },
        { label: 'Body up', unit: 'g' },
        { label: 'Starting', unit: 'g' },
      ],
    },
    {
      title: 'Piston and threadlocker',
      text: 'Clean the thread of oil, a trace of threadlocker on the last turns, tighten, and wait as long as its label says before oil goes in.',
      prevents: 'a loose piston, whose play is dead travel in both directions',
      writeIns: [{ label: 'Play felt', unit: '' }],
    },
    lengthStep(numbers, choices.lengthTolerance),
  ];
}

/** The friction of the parts file, and what more of it does to the car. */
function frictionAim({ built, rideBand }: SheetNumbers): string {
  const { kineticForce, breakawayForce } = built.build.shock.seal.typical;
  const known = `${grams(kineticForce)} by the parts file`;
  if (rideBand === undefined || breakawayForce === 0) return known;
  const perTenGrams = (rideBand / breakawayForce) * 0.01 * standardGravity;
  return `${known}; each 10 g more blurs ride height by ${millimetres(perTenGrams)}`;
}

function lengthStep({ length, motionRatio }: SheetNumbers, tolerance: number): ChecklistStep {
  const droop = (extended: number): string =>
    millimetres(lengthMismatch(extended + tolerance, extended, { tolerance, motionRatio }).droopDifference);
  const within = `left and right within ${millimetres(tolerance)}`;
  return {
    title: 'Length',
    text: 'Pull the shaft fully out and measure from eyelet centre to eyelet centre, with the droop spacers in. Set it at the rod end.',
    aim:
      length === undefined
        ? `Not in the parts file: ${within}`
        : `${millimetres(length.extended)}, ${within}: ${droop(length.extended)} of droop`,
    prevents: 'unlike droop of left and right',
    writeIns: [{ label: 'Eyelet to eyelet', unit: 'mm' }],
  };
}
