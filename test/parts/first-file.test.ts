import { describe, expect, it } from 'vitest';
import {
  type FirstAnswers,
  type FirstKey,
  firstFault,
  firstFile,
  firstQuestions,
} from '../../lib/parts/first-file.js';
import { readParts } from '../../lib/parts/index.js';

const typed: FirstAnswers = {
  bore: '16 mm',
  shaft: '3.5 mm',
  stroke: '1.2in',
  diameter: '15.9 mm',
  thickness: '3 mm',
  holeDiameter: '1.3 mm',
  holeCount: '8',
  oil: '30wt',
};

function faultOf(key: FirstKey, text: string, before: FirstAnswers = {}): string | undefined {
  const question = firstQuestions.find((one) => one.key === key);
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
    const { oils } = readParts(firstFile({ ...typed, oil: '450 cSt' }));
    expect(oils[0]?.assumptions).toEqual([
      'The 450 cSt of my oil are taken at 25 °C, as data sheets of silicone oil state them: the parts file gives no temperature.',
    ]);
  });

  it('accepts each example at its step, and each answer of a large shock, in turn', () => {
    let [examples, answers]: FirstAnswers[] = [{}, {}];
    for (const { key, example } of firstQuestions) {
      expect([key, faultOf(key, example, examples)]).toEqual([key, undefined]);
      expect([key, faultOf(key, typed[key] ?? '', answers)]).toEqual([key, undefined]);
      [examples, answers] = [
        { ...examples, [key]: example },
        { ...answers, [key]: typed[key] },
      ];
    }
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
    ['oil', '1,000 cSt', /can mean 1000 cSt or 1 cSt/u, {}],
    ['oil', '500 wt', /^must be a number from 10 to 80, got 500/u, {}],
    ['oil', 'thick', /^"thick" is not a kinematic viscosity/u, {}],
  ])('refuses %s "%s" where it is typed', (key, text, words, before) => {
    expect(faultOf(key, text, before)).toMatch(words);
  });
});
