import {
  answerOf,
  baseOf,
  type FirstAnswers,
  type FirstKey,
  type FirstQuestion,
  firstQuestions,
  isoGrade,
  type OilName,
  tradeWeight,
} from './first-questions.js';
import { readParts } from './read-parts.js';
import { PartsFileError } from './source/parts-file-error.js';

/** What is to be said before a shock is opened. */
export const firstCaution = 'Take care: spring off, wear eye protection, oil may be under pressure.';

/** What a first file leaves open: guessed on every page that needs it until it is measured. */
export const firstGuesses: readonly { readonly what: string; readonly how: string; readonly line: string }[] =
  [
    {
      what: 'the oil that stays in the closed shock',
      how: 'fill from a syringe with marks, and take off what comes out',
      line: 'oil-volume: 6 ml',
    },
    {
      what: 'what makes room for the shaft, air left on top or a bladder',
      how: 'a syringe of water fills and so measures it',
      line: 'compensator: { kind: air-pocket, volume: 0.9 ml }',
    },
    {
      what: 'where the shaft stands when you close the cap',
      how: 'look when you close it: fully out, fully in, or so far in',
      line: 'closing: { shaft: fully out }',
    },
  ];

/**
 * What is wrong with the answer of a step, in the words of the reader of parts files; nothing where it is accepted.
 *
 * @param answers - all answers so far with that of the step
 * @param question - the step
 */
export function firstFault(answers: FirstAnswers, question: FirstQuestion): string | undefined {
  const { key, example, options, mayBeEmpty, fields } = question;
  if (answerOf(answers, key) === '') {
    if (mayBeEmpty) return undefined;
    const wanted = options === undefined ? `${example}, or what you measured or read` : options.join(' or ');
    return `nothing is written; write ${wanted}`;
  }
  try {
    readParts(firstFile(answers));
    return undefined;
  } catch (error) {
    if (!(error instanceof PartsFileError)) throw error;
    // Faults of steps that were not answered yet come from their examples.
    return error.problems.find(({ path }) => fields.includes(path))?.message;
  }
}

/** The first step whose answer is not accepted among all the others; nothing where a file can be written. */
export function faultyStep(
  answers: FirstAnswers,
): { readonly key: FirstKey; readonly message: string } | undefined {
  for (const question of firstQuestions(answers)) {
    const message = firstFault(answers, question);
    if (message !== undefined) return { key: question.key, message };
  }
  return undefined;
}

/**
 * The commented parts file of the answers.
 *
 * @param answers - the answers as typed; a step without one stands at its example
 */
export function firstFile(answers: FirstAnswers): string {
  const examples = new Map(firstQuestions(answers).map(({ key, example }) => [key, example]));
  const written = (key: FirstKey): string => quoted(textOf(key));
  const textOf = (key: FirstKey): string => answerOf(answers, key) || (examples.get(key) ?? '');
  const oils = [
    oilLines(answers, 'first', 'my oil', textOf),
    ...(answerOf(answers, 'secondLabel') === '' ? [] : [oilLines(answers, 'second', 'second oil', textOf)]),
  ];
  return `# Your first parts file. Lines that begin with # are notes: take the # away, and put your own value in, once you know it.
dashpot: 1

oils:
${oils.join('\n')}

pistons:
  - name: my piston
    # with a calliper
    diameter: ${written('diameter')}
    thickness: ${written('thickness')}
    # the thickest drill shank that goes in without force
    holes: [{ count: ${countText(textOf('holeCount'))}, diameter: ${written('holeDiameter')} }]

shocks:
  - name: my shock
    # with a calliper
    bore: ${written('bore')}
    shaft: ${written('shaft')}
    stroke: ${written('stroke')}
    # Not measured yet, and guessed on every page that needs them:
${firstGuesses.map(({ what, how, line }) => `    # ${what}: ${how}\n    # ${line}`).join('\n')}

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

function oilLines(
  answers: FirstAnswers,
  oil: OilName,
  name: string,
  textOf: (key: FirstKey) => string,
): string {
  const [label, base] = [textOf(`${oil}Label`), baseOf(answers, oil)];
  const [grade, weight] = [isoGrade(label), tradeWeight(label)];
  const viscosity =
    weight === undefined && grade === undefined
      ? [`viscosity: ${quoted(label)}`, ...conditions(base, oil, textOf)]
      : [weight === undefined ? `iso-grade: ${Number(grade)}` : `trade-weight: ${weight}`];
  return [
    `  - name: ${name}`,
    '    # from the label; a label is a guess until you time a drop (see "measurements" in docs/parts-file.md)',
    `    base: ${quoted(base)}`,
    ...viscosity.map((line) => `    ${line}`),
  ].join('\n');
}

/** At what temperature a viscosity holds. */
function conditions(base: string, oil: OilName, textOf: (key: FirstKey) => string): readonly string[] {
  if (base === 'petroleum') {
    return [
      `at: ${quoted(textOf(`${oil}At`))}`,
      '# from the data sheet; 100 is a guess',
      `viscosity-index: ${countText(textOf(`${oil}Index`))}`,
    ];
  }
  return [
    '# The temperature that it holds at is a guess unless the maker says it: data sheets of silicone oil say 25 °C.',
    '# at: 25 °C',
  ];
}

/** A text as YAML takes it: bare where it is a plain word or quantity, so that the file reads as one written by hand. */
function quoted(text: string): string {
  return /^(?:silicone|petroleum|\d+(?:\.\d+)? (?:mm|cm|in|cSt|°C))$/u.test(text)
    ? text
    : JSON.stringify(text);
}

function countText(text: string): string {
  return /^\d{1,6}$/u.test(text) ? String(Number(text)) : JSON.stringify(text);
}
