import { describe, expect, it } from 'vitest';
import { faultyStep, firstFault, firstFile } from '../../lib/parts/first-file.js';
import { type FirstAnswers, type FirstKey, firstQuestions } from '../../lib/parts/first-questions.js';
import { readParts } from '../../lib/parts/index.js';

const typed: FirstAnswers = {
  bore: '16 mm',
  shaft: '3.5 mm',
  stroke: '1.2in',
  diameter: '15.9 mm',
  thickness: '3 mm',
  holeDiameter: '1.3 mm',
  holeCount: '8',
  firstLabel: '30wt',
  firstBase: 'silicone',
  secondLabel: '',
};

function faultOf(key: FirstKey, text: string, before: FirstAnswers = {}): string | undefined {
  const question = firstQuestions({ ...before, [key]: text }).find((one) => one.key === key);
  if (question === undefined) throw new Error(`no question ${key}`);
  return firstFault({ ...before, [key]: text }, question);
}

describe('a first file', () => {
  it('holds what was typed, in SI', () => {
    const { builds, shocks, pistons, oils } = readParts(firstFile(typed));
    expect(shocks[0]).toMatchObject({ bore: 0.016, shaftDiameter: 0.0035 });
    // An inch is 25.4 mm (international yard and pound agreement, 1959).
    expect(shocks[0]?.stroke).toBeCloseTo(0.03048, 12);
    expect(pistons[0]?.piston).toMatchObject({
      diameter: 0.0159,
      thickness: 0.003,
      holes: [{ count: 8, diameter: 0.0013 }],
    });
    expect(oils[0]?.definition.viscosity.kind).toBe('trade-weight');
    expect(builds.map(({ name }) => name)).toEqual(['my build']);
  });

  it('says of a viscosity without a temperature what is assumed', () => {
    const { oils } = readParts(firstFile({ ...typed, firstLabel: '450 cSt' }));
    expect(oils[0]?.assumptions).toEqual([
      'The 450 cSt of my oil are taken at 25 °C, as data sheets of silicone oil state them: the parts file gives no temperature.',
    ]);
  });

  it('holds a second bottle, and asks a petroleum oil for what its data sheet says', () => {
    const answers: FirstAnswers = {
      ...typed,
      secondLabel: '35 cSt',
      secondBase: 'petroleum',
      secondAt: '40 °C',
      secondIndex: '95',
    };
    expect(firstQuestions(answers).map(({ key }) => key)).toEqual([
      ...['bore', 'shaft', 'stroke', 'diameter', 'thickness', 'holeDiameter', 'holeCount'],
      ...['firstLabel', 'firstBase', 'secondLabel', 'secondBase', 'secondAt', 'secondIndex'],
    ]);
    const { oils, builds } = readParts(firstFile(answers));
    expect(oils.map(({ name, definition }) => [name, definition])).toMatchObject([
      ['my oil', { base: 'silicone', viscosity: { kind: 'trade-weight', weight: 30 } }],
      [
        'second oil',
        {
          base: 'petroleum',
          // 1 cSt is 1e-6 m²/s, 40 °C are 313.15 K (SI brochure, 9th edition).
          viscosity: {
            kind: 'viscosity-index',
            point: { temperature: 313.15, kinematicViscosity: 35e-6 },
            viscosityIndex: 95,
          },
        },
      ],
    ]);
    expect(builds[0]?.oil.name).toBe('my oil');
  });

  it('takes ISO VG for a petroleum oil, and asks no temperature of it: the grade is stated at 40 °C (ISO 3448)', () => {
    const answers = { ...typed, firstLabel: 'ISO VG 32', firstBase: 'petroleum' };
    expect(firstQuestions(answers).map(({ key }) => key)).not.toContain('firstAt');
    expect(readParts(firstFile(answers)).oils[0]?.definition).toMatchObject({
      base: 'petroleum',
      viscosity: { kind: 'iso-grade', grade: 32 },
    });
  });

  it.each<readonly [what: string, changed: FirstAnswers, key: FirstKey | undefined]>([
    ['nothing', {}, undefined],
    ['a bore that was made smaller than the piston', { bore: '15 mm' }, 'diameter'],
    ['a base that the label does not go with', { firstBase: 'petroleum' }, 'firstLabel'],
    ['a step that was passed over', { stroke: '' }, 'stroke'],
  ])('finds the step that is wrong once all are answered: %s', (_what, changed, key) => {
    expect(faultyStep({ ...typed, ...changed })?.key).toBe(key);
  });

  it.each([
    ['the examples', {}],
    ['a large shock', typed],
    [
      'petroleum',
      { firstLabel: '35 cSt', firstBase: 'petroleum', secondLabel: 'VG 15', secondBase: 'petroleum' },
    ],
  ] as const)('accepts each answer in turn: %s', (_what, given: FirstAnswers) => {
    let answers: FirstAnswers = {};
    for (;;) {
      const question = firstQuestions(answers).find(({ key }) => answers[key] === undefined);
      if (question === undefined) break;
      answers = { ...answers, [question.key]: given[question.key] ?? question.example };
      expect([question.key, firstFault(answers, question)]).toEqual([question.key, undefined]);
    }
    expect(faultyStep(answers)).toBeUndefined();
    expect(answers).toMatchObject(given);
  });

  it.each<readonly [key: FirstKey, text: string, words: RegExp, before: FirstAnswers]>([
    ['bore', '', /^nothing is written/u, {}],
    ['bore', '12', /^"12" has no unit; write a length/u, {}],
    ['bore', '1,200 mm', /^"1,200 mm" can mean 1200 mm or 1.2 mm; write the one/u, {}],
    ['bore', '120 mm', /^must be 3 mm to 40 mm, got "120 mm"/u, {}],
    ['bore', 'wide: [', /^"wide: \[" is not a length/u, {}],
    ['shaft', '14 mm', /bore/u, { bore: '12 mm' }],
    ['stroke', '25 cSt', /is a kinematic viscosity/u, {}],
    ['diameter', '12.4 mm', /bore/u, { bore: '12 mm' }],
    ['holeDiameter', '0.01 mm', /^must be 0.1 mm to/u, {}],
    ['holeCount', 'two', /^must be a whole number from 1 to 50/u, {}],
    ['holeCount', '40', /^do not fit on the piston/u, { holeDiameter: '3 mm' }],
    ['firstLabel', '1,000 cSt', /can mean 1000 cSt or 1 cSt/u, {}],
    ['firstLabel', '500 wt', /^must be a number from 10 to 80, got 500/u, {}],
    ['firstLabel', 'VG 1', /^must be a number from 2 to 3200, got 1/u, {}],
    ['firstLabel', 'thick', /^"thick" is not a kinematic viscosity/u, {}],
    ['firstBase', '', /^nothing is written; write silicone or petroleum$/u, {}],
    ['firstBase', 'oil', /^must be silicone or petroleum/u, {}],
    ['firstBase', 'petroleum', /^is a label of silicone damper oil/u, { firstLabel: '30 wt' }],
    ['firstBase', 'silicone', /^is for petroleum/u, { firstLabel: 'VG 32' }],
    ['firstAt', '40', /^"40" has no unit/u, { firstLabel: '35 cSt', firstBase: 'petroleum' }],
    ['firstIndex', 'high', /^must be a number/u, { firstLabel: '35 cSt', firstBase: 'petroleum' }],
    ['secondLabel', '0.1 cSt', /^must be 1 cSt to/u, {}],
    ['secondBase', 'petroleum', /^is a label of silicone damper oil/u, { secondLabel: '30 wt' }],
  ])('refuses %s "%s" where it is typed', (key, text, words, before) => {
    expect(faultOf(key, text, before)).toMatch(words);
  });
});
