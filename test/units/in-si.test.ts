import { unit } from 'mathjs';
import { describe, expect, test } from 'vitest';
import {
  createOil,
  type Damper,
  damperForce,
  damperModel,
  type FluidState,
  fluidAt,
  type OilDefinition,
  type ShaftMotion,
  sealedGas,
} from '../../lib/index.js';
import { dimensionsOf, InputError, inSi, unitsOf, type Written } from '../../lib/units/index.js';
import { damper as damperOfEdges } from '../edges/good-core.js';

const gas = sealedGas({ volume: 1e-6 });
const inSiNumbers: Damper = {
  bore: 0.012,
  shaftDiameter: 0.003,
  stroke: 0.028,
  piston: {
    diameter: 0.0119,
    thickness: 0.0025,
    eccentricity: 0.1,
    holes: [
      { count: 4, diameter: 0.0013 },
      {
        count: 2,
        diameter: 0.0011,
        shape: { kind: 'straight', blindEdge: { kind: 'chamfered', depth: 0.0002, halfAngle: Math.PI / 4 } },
      },
    ],
  },
  gas,
  seal: { kineticForce: 0.4, breakawayForce: 0.6 },
};
const asText: Written<Damper> = {
  bore: '12 mm',
  shaftDiameter: '3 mm',
  stroke: '28 mm',
  piston: {
    diameter: '11.9 mm',
    thickness: '2500 µm',
    eccentricity: 0.1,
    holes: [
      { count: 4, diameter: '1.3 mm' },
      {
        count: 2,
        diameter: '1.1 mm',
        shape: { kind: 'straight', blindEdge: { kind: 'chamfered', depth: '0.2 mm', halfAngle: '45°' } },
      },
    ],
  },
  gas,
  seal: { kineticForce: '0.4 N', breakawayForce: '600 mN' },
};

describe('quantities as text', () => {
  test('a damper becomes that of the same sizes in SI', () => {
    expect(inSi<Damper>(asText, dimensionsOf.damper)).toEqual(inSiNumbers);
  });

  test('oil, fluid and motion too, and a force comes out', () => {
    const definition: Written<OilDefinition> = {
      base: 'silicone',
      viscosity: { kind: 'silicone', point: { temperature: '25 °C', kinematicViscosity: '350 cSt' } },
    };
    const oil = createOil(inSi<OilDefinition>(definition, dimensionsOf.oil));
    const motion = inSi<ShaftMotion>({ speed: '-300 mm/s', position: '14 mm' }, dimensionsOf.motion);
    const model = damperModel(inSi<Damper>(asText, dimensionsOf.damper), fluidAt(oil, 293.15));
    const plain = { temperature: 298.15, kinematicViscosity: 350e-6 };
    const same = createOil({ base: 'silicone', viscosity: { kind: 'silicone', point: plain } });
    expect(damperForce(model, motion).force).toBeCloseTo(
      damperForce(damperModel(inSiNumbers, fluidAt(same, 293.15)), { speed: -0.3, position: 0.014 }).force,
      9,
    );
  });

  test.each<[Partial<Record<keyof Damper, unknown>>, string, string]>([
    [{ bore: 12 }, 'bore', 'bore must be a length such as "1.5 mm" (mm, µm, um, cm, m, in), got 12'],
    [{ bore: '12' }, 'bore', 'got 12'],
    [{ bore: '12 g' }, 'bore', 'got 12 g'],
    [{ bore: '1,2 mm' }, 'bore', 'got 1,2 mm'],
    [{ bore: unit(12, 'g') }, 'bore', 'bore must be a length'],
    [{ seal: { kineticForce: '0.4 kg', breakawayForce: '1 N' } }, 'seal.kineticForce', 'a force'],
    [
      { piston: { ...inSiNumbers.piston, diameter: '1 mm', thickness: '1 mm', holes: [{ diameter: 1 }] } },
      'piston.holes[0].diameter',
      'a length',
    ],
  ])('%o is refused with its path', (change, field, message) => {
    const call = () => inSi<Damper>({ ...asText, ...change } as Written<Damper>, dimensionsOf.damper);
    expect(call).toThrow(message);
    expect(call).toThrow(expect.objectContaining({ field }) as Error);
    expect(call).toThrow(InputError);
  });

  test('no field of a damper that has a unit is missing in the list: SI numbers are refused wherever the edges know a size', () => {
    const sizes = (thing: unknown, dimensions: unknown, path: string): readonly string[] =>
      Object.entries(thing as object).flatMap(([name, value]): readonly string[] => {
        const known = (dimensions as Record<string, unknown> | undefined)?.[name];
        if (typeof value === 'number') return known === undefined ? [`${path}${name}`] : [];
        if (typeof value !== 'object' || name === 'gas') return [];
        const list = Array.isArray(value) ? value : [value];
        return list.flatMap((one) => (typeof one === 'object' ? sizes(one, known, `${path}${name}.`) : []));
      });
    expect([...new Set(sizes(damperOfEdges, dimensionsOf.damper, ''))]).toEqual([
      'piston.eccentricity',
      'piston.holes.count',
    ]);
  });
});

describe('units of mathjs (a general-purpose library)', () => {
  test('are taken wherever a text is', () => {
    const fluid = inSi<FluidState>(
      {
        kinematicViscosity: unit(350, 'mm^2/s'),
        density: unit(0.97, 'g/cm^3'),
        temperature: unit(20, 'degC'),
      },
      dimensionsOf.fluid,
    );
    expect(fluid.kinematicViscosity).toBeCloseTo(350e-6, 15);
    expect(fluid.density).toBeCloseTo(970, 9);
    expect(fluid.temperature).toBeCloseTo(293.15, 9);
    expect(inSi<{ bore: number }>({ bore: unit(12, 'mm') }, { bore: 'length' }).bore).toBeCloseTo(0.012, 15);
  });

  test('a fluid ounce that mathjs reads as a mass times a volume is refused', () => {
    expect(() => inSi({ volume: unit('1 fl oz') }, dimensionsOf.gasPocket)).toThrow(
      'volume must be a volume',
    );
  });

  test('every other dimension is known to it', () => {
    const written = {
      area: unit(3, 'mm^2'),
      dynamicViscosity: unit(2, 'Pa s'),
      springRate: unit(2, 'N/mm'),
      volumeStiffness: unit(3, 'Pa/m^3'),
      mass: unit(5, 'g'),
      frequency: unit(7, 'Hz'),
      angle: unit(90, 'deg'),
    };
    const dimensions = Object.fromEntries(Object.keys(written).map((name) => [name, name]));
    const numbers = inSi<Record<string, number>>(written, dimensions as Record<string, 'area'>);
    const expected = {
      area: 3e-6,
      dynamicViscosity: 2,
      springRate: 2000,
      volumeStiffness: 3,
      mass: 0.005,
      frequency: 7,
      angle: Math.PI / 2,
    };
    for (const [name, value] of Object.entries(expected)) expect(numbers[name]).toBeCloseTo(value, 12);
  });

  test('a difference of temperatures is refused: 3 °C would become 276 K', () => {
    const dimensions = { by: 'temperatureDifference' } as const;
    expect(() => inSi({ by: unit(3, 'degC') }, dimensions)).toThrow(
      'by must be a difference of temperatures',
    );
    expect(inSi<{ by: number }>({ by: '3 °C' }, dimensions)).toEqual({ by: 3 });
  });
});

test('units are listed, the default first', () => {
  expect(unitsOf('force')).toEqual(['N', 'mN', 'lbf']);
});

test('what is no object where an object is due stays as it is, for the function that takes it to refuse', () => {
  const dimensions = { piston: { diameter: 'length' } } as const;
  expect(inSi({ piston: null }, dimensions)).toEqual({ piston: null });
  expect(inSi({ piston: 5 }, dimensions)).toEqual({ piston: 5 });
});

test('nothing is no quantity, and a part of a whole may be a plain number or a text in per cent', () => {
  expect(() => inSi({ bore: null }, { bore: 'length' })).toThrow(InputError);
  expect(inSi({ share: '20 %', other: 0.3 }, { share: 'ratio', other: 'ratio' })).toEqual({
    share: 0.2,
    other: 0.3,
  });
});
