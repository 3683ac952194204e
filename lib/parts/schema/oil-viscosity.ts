import { InputError } from '../../base/input-error.js';
import { createOil } from '../../fluid/oil/oil.js';
import type { OilBase, ViscosityDefinition } from '../../fluid/oil/oil-definition.js';
import type { ViscosityPoint } from '../../fluid/viscosity/viscosity-point.js';
import type { Finding } from '../source/finding.js';
import { mustBe } from '../source/wording.js';

/** What the file says of the viscosity of an oil, in SI. */
export interface ViscosityEntry {
  readonly base: OilBase;
  readonly viscosity?: number | undefined;
  readonly at?: number | undefined;
  readonly 'viscosity-index'?: number | undefined;
  readonly 'viscosity-temperature-coefficient'?: number | undefined;
  readonly points?: readonly { readonly at: number; readonly viscosity: number }[] | undefined;
  readonly 'iso-grade'?: number | undefined;
  readonly 'trade-weight'?: number | undefined;
}

type Result = ViscosityDefinition | Finding;

/** Temperature at which data sheets of silicone oil state its viscosity [K], 25 °C: common practice of the trade, no source. */
export const siliconeSheetTemperature = 298.15;

const ways = ['viscosity', 'points', 'iso-grade', 'trade-weight'] as const;

/** The one way in which an entry gives its viscosity, or what is wrong with it. */
export function viscosityDefinition(oil: ViscosityEntry): Result {
  const entries = ways.filter(
    (way) => oil[way] !== undefined || (way === 'viscosity' && oil.at !== undefined),
  );
  const [way] = entries;
  if (way === undefined)
    return fault(
      'needs one way to know its viscosity: "viscosity" with "at", "points", "iso-grade" or "trade-weight"',
    );
  if (entries.length > 1)
    return fault(`has more than one way to know its viscosity, ${entries.join(' and ')}; keep one`);
  const stray = strayKey(oil, way);
  if (stray !== undefined) return fault(`does not go with "${way}"; leave it out`, stray);
  const definition = definitionBy(way, oil);
  return isFinding(definition) ? definition : (lawFault(oil, definition) ?? definition);
}

/** Whether a result is a fault. */
export function isFinding(result: Result): result is Finding {
  return 'message' in result;
}

function definitionBy(way: (typeof ways)[number], oil: ViscosityEntry): Result {
  switch (way) {
    case 'viscosity':
      return fromOnePoint(oil);
    case 'points': {
      const points = oil.points ?? [];
      return { kind: 'points', points: points.map((point) => fluidPoint(point.at, point.viscosity)) };
    }
    case 'iso-grade':
      return fromGrade(oil, oil['iso-grade'] ?? 0);
    case 'trade-weight':
      return fromWeight(oil, oil['trade-weight'] ?? 0);
  }
}

function fluidPoint(temperature: number, kinematicViscosity: number): ViscosityPoint {
  return { temperature, kinematicViscosity };
}

function fault(message: string, ...path: string[]): Finding {
  return { path, message };
}

/** A key that says how the viscosity changes, beside a way that needs no such key. */
function strayKey(oil: ViscosityEntry, way: (typeof ways)[number]): string | undefined {
  const index = oil['viscosity-index'] !== undefined && way !== 'viscosity' && way !== 'iso-grade';
  if (index) return 'viscosity-index';
  const coefficient = oil['viscosity-temperature-coefficient'] !== undefined && way !== 'viscosity';
  return coefficient ? 'viscosity-temperature-coefficient' : undefined;
}

function fromOnePoint(oil: ViscosityEntry): Result {
  if (oil.viscosity === undefined)
    return fault('is missing; write the viscosity, for example "350 cSt"', 'viscosity');
  if (oil.at === undefined && oil.base !== 'silicone')
    return fault('is missing; write the temperature of the viscosity, for example "40 °C"', 'at');
  const point = fluidPoint(oil.at ?? siliconeSheetTemperature, oil.viscosity);
  const viscosityIndex = oil['viscosity-index'];
  const coefficient = oil['viscosity-temperature-coefficient'];
  if (viscosityIndex !== undefined && coefficient !== undefined)
    return fault(
      'says the same as "viscosity-temperature-coefficient" in another way; keep one',
      'viscosity-index',
    );
  if (viscosityIndex !== undefined) return { kind: 'viscosity-index', point, viscosityIndex };
  if (coefficient !== undefined && oil.base !== 'silicone')
    return fault(
      'is for silicone; write "viscosity-index" for petroleum',
      'viscosity-temperature-coefficient',
    );
  if (coefficient !== undefined) return { kind: 'viscosity-temperature-coefficient', point, coefficient };
  if (oil.base === 'silicone') return { kind: 'silicone', point };
  return fault(
    'a petroleum oil with one viscosity needs more: add its "viscosity-index" (on the data sheet), or write "points" with a second temperature',
  );
}

function fromGrade(oil: ViscosityEntry, grade: number): Result {
  if (oil.base !== 'petroleum')
    return fault('is for petroleum; write "viscosity" and "at" for silicone', 'iso-grade');
  const index = oil['viscosity-index'];
  return { kind: 'iso-grade', grade, ...(index === undefined ? {} : { viscosityIndex: index }) };
}

function fromWeight(oil: ViscosityEntry, weight: number): Result {
  if (oil.base !== 'silicone')
    return fault('is a label of silicone damper oil; write "iso-grade" for petroleum', 'trade-weight');
  return { kind: 'trade-weight', weight };
}

/** Asks the fluid laws themselves, so that a file that is read can also be computed with. */
function lawFault(oil: ViscosityEntry, viscosity: ViscosityDefinition): Finding | undefined {
  try {
    createOil({ base: oil.base, viscosity });
    return undefined;
  } catch (error) {
    if (error instanceof InputError) return lawWords(viscosity, error);
    throw error;
  }
}

function lawWords(viscosity: ViscosityDefinition, error: InputError): Finding {
  switch (viscosity.kind) {
    case 'points':
      return fault(
        'must be at different temperatures, with a viscosity that falls as it gets warmer',
        'points',
      );
    case 'viscosity-index':
      return fault(
        'is not defined for an oil of this viscosity (it must have 2 to 2000 cSt at 100 °C); write "points" instead',
        'viscosity-index',
      );
    case 'iso-grade':
      return error.field === 'grade'
        ? fault(mustBe(error.accepted, viscosity.grade), 'iso-grade')
        : fault('is too thin for a viscosity index; write "points" instead', 'iso-grade');
    default:
      return fault(`must be ${error.accepted} for ${error.field}`);
  }
}
