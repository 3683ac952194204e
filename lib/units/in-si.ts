import { refuse, requireRecord, requireWord } from '../base/checks.js';
import { record, requireShape } from '../base/shape.js';
import type { Dimensions } from './dimensions.js';
import { describeDimension, parseQuantity, QuantityError } from './quantity-text.js';
import { type Dimension, unitTable } from './unit-table.js';

/**
 * A quantity of another library that knows its unit, such as `unit(12, 'mm')` of mathjs: told by what it can do, so that nothing has to be installed for it.
 *
 * @public
 */
export interface ForeignUnit {
  /** Its number in a unit; throws where the dimensions differ. */
  readonly toNumber: (unit: string) => number;
}

/**
 * A thing whose numbers may be written as text with a unit, or as a {@link ForeignUnit}.
 *
 * @public
 */
export type Written<Thing> = Thing extends number
  ? number | string | ForeignUnit
  : Thing extends readonly (infer Entry)[]
    ? readonly Written<Entry>[]
    : Thing extends object
      ? { readonly [Field in keyof Thing]: Written<Thing[Field]> }
      : Thing;

/** The SI unit of each dimension as mathjs writes it. A difference of temperatures is none there: 3 °C would be taken for 276 K. */
const foreignNames: Readonly<Record<Exclude<Dimension, 'temperatureDifference' | 'ratio'>, string>> = {
  length: 'm',
  area: 'm^2',
  volume: 'm^3',
  temperature: 'K',
  kinematicViscosity: 'm^2/s',
  dynamicViscosity: 'Pa s',
  density: 'kg/m^3',
  pressure: 'Pa',
  force: 'N',
  speed: 'm/s',
  springRate: 'N/m',
  volumeStiffness: 'Pa/m^3',
  mass: 'kg',
  time: 's',
  frequency: 'Hz',
  angle: 'rad',
};

/**
 * Turns quantities with their units into SI numbers, all of a thing at once: `inSi<Damper>({ bore: '12 mm', … }, dimensionsOf.damper)`.
 *
 * Where a unit belongs a plain number is refused, since nobody can tell whether 12 means millimetres; a ratio may be a number or a text such as `5 %`. All other fields are
 * passed on as they are, and checked by the function that takes the thing.
 *
 * @param written - the thing, its quantities as text such as `1.7 mm` or as units of mathjs
 * @param dimensions - which field has which dimension, such as {@link dimensionsOf}
 * @returns the same thing with numbers in SI
 * @throws InputError that names the field, for a text without a unit, with a unit that is not accepted or of another dimension, and for a plain number
 * @public
 */
export function inSi<Thing>(written: Written<Thing>, dimensions: Dimensions): Thing {
  requireShape({ written, dimensions }, { written: record, dimensions: dimensionTree });
  return converted(written, dimensions, '') as Thing;
}

/** More levels than any thing of this library has. */
const deepest = 20;

/** Throws unless each leaf is a dimension. */
function dimensionTree(value: unknown, field: string): void {
  if (typeof value === 'string') {
    requireWord(value, Object.keys(unitTable), field);
    return;
  }
  requireRecord(value, field);
  // One that holds itself would never end.
  if (field.split('.').length > deepest) refuse(value, field, '', 'a tree of dimensions that ends');
  for (const [name, inner] of Object.entries(value as Dimensions)) dimensionTree(inner, `${field}.${name}`);
}

function converted(value: unknown, dimensions: Dimension | Dimensions, field: string): unknown {
  if (typeof dimensions === 'string') return numberOf(value, dimensions, field);
  if (Array.isArray(value))
    return value.map((entry, index) => converted(entry, dimensions, `${field}[${index}]`));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value).map(([name, inner]) => {
      const dimension: unknown = dimensions[name];
      const path = field === '' ? name : `${field}.${name}`;
      // What every object has, such as a constructor, is a function and no dimension.
      const known = typeof dimension === 'string' || typeof dimension === 'object';
      return [name, known ? converted(inner, dimension as Dimension | Dimensions, path) : inner];
    }),
  );
}

function numberOf(value: unknown, dimension: Dimension, field: string): unknown {
  if (value === undefined) return undefined;
  if (dimension === 'ratio' && typeof value === 'number') return value;
  const wanted = describeDimension(dimension);
  if (typeof value === 'string') {
    try {
      return parseQuantity(value, dimension);
    } catch (error) {
      if (error instanceof QuantityError) refuse(value, field, '', wanted);
      throw error;
    }
  }
  return foreignNumber(value, dimension) ?? refuse(value, field, '', wanted);
}

function foreignNumber(value: unknown, dimension: Dimension): number | undefined {
  if (dimension === 'ratio' || dimension === 'temperatureDifference') return undefined;
  if (typeof value !== 'object' || value === null) return undefined;
  const { toNumber } = value as Partial<ForeignUnit>;
  if (typeof toNumber !== 'function') return undefined;
  try {
    const number: unknown = toNumber.call(value, foreignNames[dimension]);
    return typeof number === 'number' && Number.isFinite(number) ? number : undefined;
  } catch {
    // The other library says by an error of its own that the dimensions differ.
    return undefined;
  }
}
