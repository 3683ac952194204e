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
  /** The only answers that are accepted, where they are few. */
  readonly options?: readonly string[];
  /** Whether the step may be left empty. */
  readonly mayBeEmpty?: true;
}

type SizeKey = 'bore' | 'shaft' | 'stroke' | 'diameter' | 'thickness' | 'holeDiameter' | 'holeCount';
/** What is asked of an oil; of the second the same. */
export type OilKey = 'Label' | 'Base' | 'At' | 'Index';
export type OilName = 'first' | 'second';
export type FirstKey = SizeKey | `${OilName}${OilKey}`;

/** What was answered so far, as typed. */
export type FirstAnswers = Readonly<Partial<Record<FirstKey, string>>>;

/** The steps that measure the shock, in the order in which it comes apart. */
const sizeQuestions: readonly FirstQuestion[] = [
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
];

/** The answer of a step as it counts: without space around it. */
export function answerOf(answers: FirstAnswers, key: FirstKey): string {
  return (answers[key] ?? '').trim();
}

/**
 * The steps that these answers lead through, in their order: what is asked of an oil depends on its label and base.
 *
 * @param answers - what was answered so far
 */
export function firstQuestions(answers: FirstAnswers): readonly FirstQuestion[] {
  const second = answerOf(answers, 'secondLabel') === '' ? [secondLabel] : oilQuestions(answers, 'second');
  return [...sizeQuestions, ...oilQuestions(answers, 'first'), ...second];
}

/** What an oil is made of; a label in ISO VG is that of a petroleum oil, any other that of a silicone unless the answer says otherwise. */
export function baseOf(answers: FirstAnswers, oil: OilName): string {
  const usual = isoGrade(answerOf(answers, `${oil}Label`)) === undefined ? 'silicone' : 'petroleum';
  return answerOf(answers, `${oil}Base`) || usual;
}

/** The number of a label in ISO VG. */
export function isoGrade(label: string): string | undefined {
  return /^(?:ISO\s*)?VG\s*(\d{1,6})$/iu.exec(label)?.[1];
}

/** The number of a label in wt. */
export function tradeWeight(label: string): string | undefined {
  return /^(\d+(?:\.\d+)?)\s*wt$/iu.exec(label)?.[1];
}

function oilQuestions(answers: FirstAnswers, oil: OilName): readonly FirstQuestion[] {
  const at = oil === 'first' ? 'oils[0]' : 'oils[1]';
  const label = oil === 'first' ? firstLabel : secondLabel;
  const byLabel = ['trade-weight', 'iso-grade'].map((field) => `${at}.${field}`);
  const base: FirstQuestion = {
    key: `${oil}Base`,
    label: `What the ${oil === 'first' ? '' : 'second '}oil is made of`,
    how: 'From the label or the data sheet: "silicone", or "petroleum", which is also called mineral oil. Shock oil is silicone almost always.',
    example: 'silicone',
    fields: [`${at}.base`, ...byLabel],
    options: ['silicone', 'petroleum'],
  };
  const warm = baseOf(answers, oil) === 'petroleum' && isoGrade(answerOf(answers, label.key)) === undefined;
  return [label, base, ...(warm ? petroleumQuestions(oil, at) : [])];
}

/** What a petroleum oil with a viscosity needs besides. */
function petroleumQuestions(oil: OilName, at: string): readonly FirstQuestion[] {
  return [
    {
      key: `${oil}At`,
      label: 'Temperature of that viscosity',
      how: 'From the data sheet of the oil; most state 40 °C.',
      example: '40 °C',
      fields: [`${at}.at`],
    },
    {
      key: `${oil}Index`,
      label: 'Its viscosity index',
      how: 'From the data sheet of the oil. 100 is a guess where it says nothing.',
      example: '100',
      fields: [`${at}.viscosity-index`],
    },
  ];
}

const labelFields = (at: string): readonly string[] => [
  `${at}.viscosity`,
  `${at}.trade-weight`,
  `${at}.iso-grade`,
  at,
];

const firstLabel: FirstQuestion = {
  key: 'firstLabel',
  label: 'Label of the oil',
  how: 'What the bottle says, with its unit: a number with cSt, a number with wt, or ISO VG with a number. It is a guess until you time a drop.',
  example: '350 cSt',
  fields: labelFields('oils[0]'),
};

const secondLabel: FirstQuestion = {
  key: 'secondLabel',
  label: 'Label of a second bottle',
  how: 'Of the same kind: what you could fill instead. Leave it empty if there is none.',
  example: '450 cSt',
  fields: labelFields('oils[1]'),
  mayBeEmpty: true,
};
