import { readParts } from './read-parts.js';
import { PartsFileError } from './source/parts-file-error.js';

/** One step of a first parts file. */
export interface FirstQuestion {
  readonly key: FirstKey;
  /** What is asked, in a few words. */
  readonly label: string;
  /** How to find out. */
  readonly how: string;
  readonly example: string;
  /** Fields of the written file whose faults this step is told. */
  readonly fields: readonly string[];
}

export type FirstKey =
  | 'bore'
  | 'shaft'
  | 'stroke'
  | 'diameter'
  | 'thickness'
  | 'holeDiameter'
  | 'holeCount'
  | 'oil';

/** What was answered so far, as typed. */
export type FirstAnswers = Readonly<Partial<Record<FirstKey, string>>>;

/** The steps, in the order in which a shock comes apart. */
export const firstQuestions: readonly FirstQuestion[] = [
  {
    key: 'bore',
    label: 'Inner diameter of the shock body',
    how: 'With the inside jaws of a calliper, at the mouth of the empty body.',
    example: '12 mm',
    fields: ['shocks[0].bore'],
  },
  {
    key: 'shaft',
    label: 'Diameter of the shaft',
    how: 'With a calliper, on the bare shaft.',
    example: '3 mm',
    fields: ['shocks[0].shaft', 'shocks[0]'],
  },
  {
    key: 'stroke',
    label: 'How far the shaft moves',
    how: 'With a calliper: the free shaft fully out, less the free shaft pushed to the stop. Spring off.',
    example: '25 mm',
    fields: ['shocks[0].stroke'],
  },
  {
    key: 'diameter',
    label: 'Outer diameter of the piston',
    how: 'With a calliper, across the piston, at two places.',
    example: '11.9 mm',
    fields: ['pistons[0].diameter', 'builds[0]', 'builds[0].piston', 'builds[0].shock'],
  },
  {
    key: 'thickness',
    label: 'Thickness of the piston where the holes are',
    how: 'With a calliper, on the plate and not on its rim.',
    example: '2.5 mm',
    fields: ['pistons[0].thickness'],
  },
  {
    key: 'holeDiameter',
    label: 'Diameter of its holes',
    how: 'The thickest drill shank that goes in without force. 0.05 mm matter.',
    example: '1.5 mm',
    fields: ['pistons[0].holes[0].diameter'],
  },
  {
    key: 'holeCount',
    label: 'Number of its holes',
    how: 'Count them.',
    example: '2',
    fields: ['pistons[0].holes[0].count', 'pistons[0].holes', 'pistons[0].holes[0]'],
  },
  {
    key: 'oil',
    label: 'Label of the oil',
    how: 'What the bottle says, with its unit: a number with cSt, or a number with wt.',
    example: '350 cSt',
    fields: ['oils[0].viscosity', 'oils[0].trade-weight', 'oils[0]'],
  },
];

/**
 * What is wrong with the answer of a step, in the words of the reader of parts files; nothing where it is accepted.
 *
 * @param answers - all answers so far with that of the step
 * @param question - the step
 */
export function firstFault(answers: FirstAnswers, question: FirstQuestion): string | undefined {
  if ((answers[question.key] ?? '').trim() === '')
    return `nothing is written; write ${question.example}, or what you measured`;
  try {
    readParts(firstFile(answers));
    return undefined;
  } catch (error) {
    if (!(error instanceof PartsFileError)) throw error;
    // Faults of steps that were not answered yet come from their examples.
    return error.problems.find(({ path }) => question.fields.includes(path))?.message;
  }
}

/**
 * The commented parts file of the answers.
 *
 * @param answers - the answers as typed; a step without one stands at its example
 */
export function firstFile(answers: FirstAnswers): string {
  const { bore, shaft, stroke, diameter, thickness, holeDiameter, holeCount, oil } = writtenAnswers(answers);
  return `# Your first parts file. Lines that begin with # are notes: take the # away, and put your own value in, once you know it.
dashpot: 1

oils:
  - name: my oil
    # from the label; a label is a guess until you time a drop (see "measurements" in docs/parts-file.md)
    base: silicone
    ${oil}
    # of a number in cSt: the temperature that it holds at. A guess unless the maker says so: data sheets of silicone oil say 25 °C.
    # at: 25 °C

pistons:
  - name: my piston
    # with a calliper
    diameter: ${diameter}
    thickness: ${thickness}
    # the thickest drill shank that goes in without force
    holes: [{ count: ${holeCount}, diameter: ${holeDiameter} }]

shocks:
  - name: my shock
    # with a calliper
    bore: ${bore}
    shaft: ${shaft}
    stroke: ${stroke}
    # Not measured yet, and guessed on every page that needs them:
    # the oil that stays in the closed shock: fill from a syringe with marks, and take off what comes out
    # oil-volume: 6 ml
    # what makes room for the shaft: air left on top, or a bladder; a syringe of water fills and so measures it
    # compensator: { kind: air-pocket, volume: 0.9 ml }
    # where the shaft stands when you close the cap
    # closing: { shaft: fully out }

# a spring, with its rate; then add "spring: my spring" to the build
# springs:
#   - { name: my spring, rate: 0.60 N/mm, free-length: 42 mm }

builds:
  - name: my build
    shock: my shock
    piston: my piston
    oil: my oil
`;
}

function writtenAnswers(answers: FirstAnswers): Readonly<Record<FirstKey, string>> {
  const texts = Object.fromEntries(
    firstQuestions.map(({ key, example }) => [key, (answers[key] ?? example).trim()]),
  ) as Record<FirstKey, string>;
  return { ...mapped(texts, quoted), holeCount: countText(texts.holeCount), oil: oilLine(texts.oil) };
}

function mapped(
  texts: Readonly<Record<FirstKey, string>>,
  write: (text: string) => string,
): Record<FirstKey, string> {
  return Object.fromEntries(Object.entries(texts).map(([key, text]) => [key, write(text)])) as Record<
    FirstKey,
    string
  >;
}

/** A text as YAML takes it: bare where it is a plain quantity, so that the file reads as one written by hand. */
function quoted(text: string): string {
  return /^\d+(?:\.\d+)? (?:mm|cm|in|cSt)$/u.test(text) ? text : JSON.stringify(text);
}

function countText(text: string): string {
  return /^\d{1,6}$/u.test(text) ? String(Number(text)) : JSON.stringify(text);
}

function oilLine(text: string): string {
  const weight = /^(\d+(?:\.\d+)?)\s*wt$/iu.exec(text)?.[1];
  return weight === undefined ? `viscosity: ${quoted(text)}` : `trade-weight: ${weight}`;
}
