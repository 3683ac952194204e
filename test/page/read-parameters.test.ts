import { readFileSync } from 'node:fs';
import { describe, expect, expectTypeOf, it } from 'vitest';
import {
  choice,
  defaultText,
  integer,
  onePart,
  ParameterError,
  type ParameterValues,
  parameterTexts,
  quantity,
  readParameterValues,
  severalParts,
} from '../../lib/page/index.js';
import { type OilPart, type PistonPart, readParts } from '../../lib/parts/index.js';
import { parts } from './sample-page.js';

const words = { label: 'Label', help: 'Help.' };
const declaration = {
  holeDiameter: quantity({
    ...words,
    dimension: 'length',
    unit: 'mm',
    default: 1.5,
    min: 0.5,
    max: 3,
    step: 0.1,
  }),
  temperature: quantity({
    ...words,
    dimension: 'temperature',
    unit: '°C',
    default: 20,
    min: -10,
    max: 60,
    step: 1,
  }),
  count: integer({ ...words, default: 4, min: 1, max: 24 }),
  law: choice({ ...words, options: ['default', 'thick edge'], default: 'default' }),
  piston: onePart({ ...words, list: 'pistons' }),
  oils: severalParts({ ...words, list: 'oils', atMost: 2 }),
};

const read = (texts: Readonly<Record<string, string | readonly string[]>>) =>
  readParameterValues(declaration, texts, parts);

const problemOf = (texts: Readonly<Record<string, string | readonly string[]>>): string => {
  try {
    read(texts);
  } catch (error) {
    if (error instanceof ParameterError) return error.message;
  }
  return 'no ParameterError';
};

describe('values of parameters', () => {
  it('are what is declared where nothing is given', () => {
    const values = read({});
    expect(values.holeDiameter).toBeCloseTo(1.5e-3, 12);
    expect(values.temperature).toBe(293.15);
    expect(values.count).toBe(4);
    expect(values.law).toBe('default');
    expect(values.piston.name).toBe('two holes');
    expect(values.oils.map(({ name }) => name)).toEqual(['thin', 'middle']);
  });

  it('are the parts of the first build where the file has builds', () => {
    const demo = readParts(readFileSync('notebooks/demo-parts.yaml', 'utf8'));
    const [build] = demo.builds;
    const { oil, piston } = readParameterValues(
      { oil: onePart({ ...words, list: 'oils' }), piston: onePart({ ...words, list: 'pistons' }) },
      {},
      demo,
    );
    expect(oil.name).toBe(build?.oil.name);
    expect(piston.name).toBe(build?.piston.name);
    expect(oil.name).not.toBe(demo.oils[0]?.name);
  });

  it('are what the parts file says of them, before what is declared and after what is given', () => {
    const off = {
      drill: quantity({
        ...words,
        dimension: 'length',
        unit: 'mm',
        default: 0.05,
        min: 0,
        max: 1,
        step: 0.01,
        inFile: ({ tolerances }) => tolerances?.holeDiameter,
      }),
    };
    const told = { ...parts, tolerances: { holeDiameter: 2e-5 } };
    expect(readParameterValues(off, {}, told).drill).toBe(2e-5);
    expect(readParameterValues(off, {}, { ...parts, tolerances: {} }).drill).toBeCloseTo(5e-5, 12);
    expect(readParameterValues(off, { drill: '0.1 mm' }, told).drill).toBeCloseTo(1e-4, 12);
    expect(defaultText(off.drill)).toBe('what the parts file says, or 0.05 mm,');
  });

  it('may be bare numbers only where that is declared', () => {
    const kelvin = {
      dimension: 'temperatureDifference',
      unit: 'K',
      default: 3,
      min: 0,
      max: 20,
      step: 1,
    } as const;
    const warmer = quantity({ ...words, ...kelvin, bareNumber: true });
    expect(readParameterValues({ warmer }, { warmer: '4' }, parts).warmer).toBe(4);
    expect(readParameterValues({ warmer }, { warmer: '9 °F' }, parts).warmer).toBeCloseTo(5, 12);
    expect(() => readParameterValues({ warmer }, { warmer: '40' }, parts)).toThrow('out of range');
    const strict = quantity({ ...words, ...kelvin });
    expect(() => readParameterValues({ strict }, { strict: '4' }, parts)).toThrow('"4" has no unit');
  });

  it('have the types of their declaration', () => {
    expectTypeOf<ParameterValues<typeof declaration>>().toEqualTypeOf<{
      readonly holeDiameter: number;
      readonly temperature: number;
      readonly count: number;
      readonly law: 'default' | 'thick edge';
      readonly piston: PistonPart;
      readonly oils: readonly OilPart[];
    }>();
  });

  it('are read in any accepted unit, under either spelling of the name', () => {
    expect(read({ 'hole-diameter': '0.1 in' }).holeDiameter).toBeCloseTo(2.54e-3, 12);
    expect(read({ holeDiameter: '1200 µm' }).holeDiameter).toBeCloseTo(1.2e-3, 12);
    expect(read({ oils: ['thick', 'thin'] }).oils.map(({ name }) => name)).toEqual(['thick', 'thin']);
    expect(read({ oils: 'thick' }).oils.length).toBe(1);
    expect(read({ law: 'thick edge', count: '7' })).toMatchObject({ law: 'thick edge', count: 7 });
  });

  it('reach the limit of their range in another unit', () => {
    expect(read({ temperature: '140 °F' }).temperature).toBeCloseTo(333.15, 9);
    expect(problemOf({ temperature: '140.1 °F' })).toContain('out of range');
  });

  it('are refused by name where they are no values of these parameters', () => {
    const values = read({ temperature: '12 °C', oils: ['thick', 'thin'] });
    for (const [name, value] of [
      ['temperature', '12 °C'],
      ['temperature', undefined],
      ['oils', 3],
      ['oils', [3]],
    ] as const)
      expect(() => parameterTexts(declaration, { ...values, [name]: value } as never)).toThrow(
        `values.${name}`,
      );
    expect(() => parameterTexts({ ...declaration, temperature: 3 } as never, values)).toThrow(
      'declaration.temperature',
    );
  });

  it('are written as a reader sees them', () => {
    const texts = parameterTexts(declaration, read({ temperature: '12 °C', oils: ['thick', 'thin'] }));
    expect(texts.map(({ name, text }) => `${name}: ${text}`)).toEqual([
      'hole-diameter: 1.5 mm',
      'temperature: 12 °C',
      'count: 4',
      'law: default',
      'piston: two holes',
      'oils: thick, thin',
    ]);
  });
});

describe('a wrong value', () => {
  it.each([
    [{ temprature: '12 °C' }, 'no parameter "temprature"; did you mean "temperature"?'],
    [{ holediameter: '1 mm' }, 'no parameter "holediameter"; did you mean "hole-diameter"?'],
    [{ temperature: '80 °C' }, 'temperature: "80 °C" is out of range; accepted is −10 °C to 60 °C'],
    [{ temperature: '12' }, 'temperature: "12" has no unit'],
    [{ temperature: '12 mm' }, 'temperature: '],
    [{ count: '2.5' }, 'count: "2.5" is not accepted; write a whole number from 1 to 24'],
    [{ count: '25' }, 'a whole number from 1 to 24'],
    [{ law: 'thick-edge' }, 'law: "thick-edge" is not accepted; did you mean "thick edge"?'],
    [
      { piston: 'two hole' },
      'piston: no "two hole" among the pistons of the parts file; did you mean "two holes"?',
    ],
    [{ piston: ['a', 'b'] }, 'piston: is given more than once'],
    [{ oils: ['thin', 'thin'] }, 'oils: "thin" is chosen twice'],
    [{ oils: ['thin', 'middle', 'thick'] }, 'oils: 3 are chosen, at most 2 are accepted'],
  ])('%j is told', (texts, message) => {
    expect(problemOf(texts)).toContain(message);
  });

  it('is told with all others at once, a line each', () => {
    expect(problemOf({ temperature: '80 °C', count: 'many', unknown: '1' }).split('\n').length).toBe(3);
  });

  it('is told where the parts file has none of a list', () => {
    const none = { ...parts, pistons: [], oils: [] };
    expect(() => readParameterValues(declaration, {}, none)).toThrow(
      'piston: the parts file has no pistons\noils: the parts file has no oils',
    );
    expect(() => readParameterValues(declaration, {}, none)).toThrow(
      expect.objectContaining({ emptyLists: ['pistons', 'oils'] }),
    );
    // A list that is there and a name that is not is another fault.
    expect(() => readParameterValues(declaration, { piston: 'none such' }, parts)).toThrow(
      expect.objectContaining({ emptyLists: [] }),
    );
  });
});
