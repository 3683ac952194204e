import { requireKind } from '../../base/checks.js';
import { madeWith, record, requireShape } from '../../base/shape.js';
import type { Parts } from '../../parts/parts.js';
import { nearNames } from '../../parts/source/near-names.js';
import { parseQuantity, QuantityError } from '../../units/index.js';
import { toSi } from '../../units/quantity-text.js';
import { findUnit } from '../../units/unit-table.js';
import { ParameterError } from './parameter-error.js';
import { acceptedText, optionName } from './parameter-text.js';
import type { Parameter, Parameters, ParameterValues, PartList, QuantityParameter } from './parameters.js';

/**
 * What a user wrote for parameters, by their names in the declaration or as options (`holeDiameter` or
 * `hole-diameter`); several texts where several parts are chosen.
 *
 * @public
 */
export type ParameterTexts = Readonly<Record<string, string | readonly string[]>>;

interface NamedPart {
  readonly name: string;
}

type AnyValue = number | string | NamedPart | readonly NamedPart[];

/**
 * Reads what a user wrote for the parameters of a notebook, and fills in the rest: from the build chosen by a parameter `build`, else from the first
 * build of the file, else from the declaration.
 *
 * @param declaration - the parameters of the notebook
 * @param texts - what the user wrote
 * @param parts - the parts file that names refer to
 * @returns the value of every parameter, quantities in SI
 * @throws ParameterError with one line for each problem: a name that is not declared (with near ones), a text that is
 * no such quantity, a value out of range (with the range), an unknown part (with near ones)
 *
 * @public
 */
export function readParameterValues<P extends Parameters>(
  declaration: P,
  texts: ParameterTexts,
  parts: Parts,
): ParameterValues<P> {
  requireShape(
    { declaration, texts, parts },
    { declaration: record, texts: record, parts: madeWith('oils') },
  );
  for (const [name, text] of Object.entries(texts))
    for (const one of Array.isArray(text) ? text : [text]) requireKind(one, 'string', name);
  const problems: string[] = [];
  const empty = new Set<PartList>();
  const names = new Map(Object.keys(declaration).map((name) => [optionName(name), name]));
  const written = new Map<string, string | readonly string[]>();
  for (const [key, text] of Object.entries(texts)) {
    const name = names.get(optionName(key));
    if (name === undefined)
      problems.push(unknownName(`no parameter "${key}"`, optionName(key), [...names.keys()]));
    else written.set(name, text);
  }
  const ofBuild = aroundBuild(declaration, written, parts);
  const values: Record<string, AnyValue> = {};
  for (const [name, parameter] of Object.entries(declaration)) {
    try {
      values[name] = readValue(parameter, written.get(name), ofBuild);
    } catch (error) {
      if (!(error instanceof ParameterError || error instanceof QuantityError)) throw error;
      if (error instanceof ParameterError) for (const list of error.emptyLists) empty.add(list);
      problems.push(...error.message.split('\n').map((line) => `${optionName(name)}: ${line}`));
    }
  }
  if (problems.length > 0) throw new ParameterError(problems, [...empty]);
  // Each value was read by the kind of its own parameter, which the mapped type cannot see.
  return values as ParameterValues<P>;
}

/** The parameter that chooses the build of the reader; what is not given begins at that build. */
export const buildParameter = 'build';

/**
 * Parts in which a build comes first, where one is chosen: what is not given begins at it, as it otherwise does at the first build of the file.
 *
 * @throws ParameterError where the file has no build of that name
 */
export function partsAround(parts: Parts, build: string | undefined): Parts {
  if (build === undefined) return parts;
  partNamed(parts.builds, 'builds', build);
  const first = parts.builds.filter(({ name }) => name === build);
  return { ...parts, builds: [...first, ...parts.builds.filter(({ name }) => name !== build)] };
}

function aroundBuild(
  declaration: Parameters,
  written: ReadonlyMap<string, string | readonly string[]>,
  parts: Parts,
): Parts {
  const text = written.get(buildParameter);
  const chooses = declaration[buildParameter]?.kind === 'part' && typeof text === 'string';
  // An unknown build is told where the build itself is read.
  return chooses && parts.builds.some(({ name }) => name === text) ? partsAround(parts, text) : parts;
}

/** A sentence on an unknown name, with the known names near it, or all of a few. */
export function unknownName(what: string, name: string, known: readonly string[]): string {
  const near = nearNames(name, known);
  if (near.length > 0) return `${what}; did you mean ${near.map((one) => `"${one}"`).join(' or ')}?`;
  if (known.length === 0) return `${what}; there are none`;
  const shown = known.slice(0, 12).map((one) => `"${one}"`);
  return `${what}; there are ${shown.join(', ')}${known.length > shown.length ? ' and more' : ''}`;
}

function readValue(
  parameter: Parameter,
  written: string | readonly string[] | undefined,
  parts: Parts,
): AnyValue {
  const texts = written === undefined ? [] : typeof written === 'string' ? [written] : written;
  if (parameter.kind === 'parts') return chosenParts(parameter, texts, parts);
  if (texts.length > 1) throw new ParameterError(['is given more than once']);
  const [text] = texts;
  switch (parameter.kind) {
    case 'quantity':
      return readQuantity(parameter, text, parts);
    case 'integer':
      return readInteger(parameter, text);
    case 'choice':
      if (text === undefined || parameter.options.includes(text)) return text ?? parameter.default;
      throw new ParameterError([unknownName(`"${text}" is not accepted`, text, parameter.options)]);
    case 'part':
      return text === undefined
        ? defaultPart(parameter.list, parts)
        : partNamed(parts[parameter.list], parameter.list, text);
  }
}

function readQuantity(parameter: QuantityParameter, text: string | undefined, parts: Parts): number {
  const { dimension, min, max } = parameter;
  const unit = findUnit(dimension, parameter.unit);
  if (unit === undefined) throw new TypeError(`"${parameter.unit}" is no unit of ${dimension}`);
  if (text === undefined) return parameter.inFile?.(parts) ?? toSi(parameter.default, unit);
  const bare = parameter.bareNumber === true && /^[+-]?\d+(\.\d+)?$/u.test(text.trim());
  const value = parseQuantity(bare ? `${text} ${parameter.unit}` : text, dimension);
  // The limit itself is accepted in every unit, whatever the last bit of its conversion.
  const slack = 1e-12 * Math.max(Math.abs(value), Math.abs(toSi(max, unit)));
  if (value < toSi(min, unit) - slack || value > toSi(max, unit) + slack)
    throw new ParameterError([`"${text}" is out of range; accepted is ${acceptedText(parameter)}`]);
  return value;
}

function readInteger(parameter: Parameter & { readonly kind: 'integer' }, text: string | undefined): number {
  if (text === undefined) return parameter.default;
  const value = /^[+-]?\d{1,15}$/u.test(text.trim()) ? Number(text) : Number.NaN;
  if (value >= parameter.min && value <= parameter.max) return value;
  throw new ParameterError([`"${text}" is not accepted; write ${acceptedText(parameter)}`]);
}

function emptyList(list: PartList): ParameterError {
  return new ParameterError([`the parts file has no ${list}`], [list]);
}

/** Unless chosen, the part of the first build, so that a page opens on a shock that exists; without builds the first of the list. */
function defaultPart(list: PartList, parts: Parts): NamedPart {
  const [build] = parts.builds;
  const ofBuild = { oils: build?.oil, pistons: build?.piston, shocks: build?.shock, springs: build?.spring };
  const part: NamedPart | undefined = list === 'builds' ? build : (ofBuild[list] ?? parts[list][0]);
  if (part === undefined) throw emptyList(list);
  return part;
}

function partNamed(list: readonly NamedPart[], listName: string, name: string): NamedPart {
  const part = list.find((one) => one.name === name);
  if (part !== undefined) return part;
  const known = list.map((one) => one.name);
  throw new ParameterError([
    unknownName(`no "${name}" among the ${listName} of the parts file`, name, known),
  ]);
}

function chosenParts(
  parameter: Parameter & { readonly kind: 'parts' },
  names: readonly string[],
  parts: Parts,
): AnyValue {
  const { list, atMost } = parameter;
  const known: readonly NamedPart[] = parts[list];
  if (names.length > atMost)
    throw new ParameterError([`${names.length} are chosen, at most ${atMost} are accepted`]);
  const repeated = names.find((name, index) => names.indexOf(name) !== index);
  if (repeated !== undefined) throw new ParameterError([`"${repeated}" is chosen twice`]);
  if (names.length === 0 && known.length === 0) throw emptyList(list);
  return names.length === 0 ? known.slice(0, atMost) : names.map((name) => partNamed(known, list, name));
}
