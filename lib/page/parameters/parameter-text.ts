import { listOf, record, requireShape, type Shape, someText } from '../../base/shape.js';
import { formatQuantity, roundedText } from '../../units/index.js';
import { parameterShape } from './parameter-shapes.js';
import type {
  Parameter,
  Parameters,
  ParameterValue,
  ParameterValues,
  QuantityParameter,
} from './parameters.js';

/**
 * Name of a parameter as a user writes it, `holeDiameter` as `hole-diameter`.
 * @example
 * ```ts
 * optionName('springRate'); // 'spring-rate': words of an option are joined by hyphens
 * ```
 * @public
 */
export function optionName(parameterName: string): string {
  requireShape({ parameterName }, { parameterName: someText });
  return parameterName.replaceAll(/[A-Z]/gu, (letter) => `-${letter.toLowerCase()}`);
}

/**
 * What a parameter accepts, in words.
 *
 * @public
 */
export function acceptedText(parameter: Parameter): string {
  requireShape({ parameter }, { parameter: parameterShape });
  switch (parameter.kind) {
    case 'quantity':
      return `${inUnit(parameter, parameter.min)} to ${inUnit(parameter, parameter.max)}`;
    case 'integer':
      return `a whole number from ${parameter.min} to ${parameter.max}`;
    case 'choice':
      return parameter.options.join(' or ');
    case 'part':
      return `the name of one of the ${parameter.list} in the parts file`;
    case 'parts':
      return `names of ${parameter.list} in the parts file, at most ${parameter.atMost}`;
  }
}

/**
 * What a parameter is where nothing is given, in words.
 *
 * @public
 */
export function defaultText(parameter: Parameter): string {
  requireShape({ parameter }, { parameter: parameterShape });
  switch (parameter.kind) {
    case 'quantity':
      return parameter.inFile === undefined
        ? inUnit(parameter, parameter.default)
        : `what the parts file says, or ${inUnit(parameter, parameter.default)},`;
    case 'integer':
      return String(parameter.default);
    case 'choice':
      return parameter.default;
    case 'part':
      return 'the first in the file';
    case 'parts':
      return parameter.atMost === 1 ? 'the first in the file' : `the first ${parameter.atMost} in the file`;
  }
}

/**
 * A parameter with its value in words.
 *
 * @public
 */
export interface ParameterText {
  readonly name: string;
  readonly label: string;
  readonly text: string;
}

/** Form of {@link ParameterText}. */
export const parameterTextShape: Shape = { name: someText, label: someText, text: someText };

/**
 * The values of all parameters in words, in the order of the declaration.
 *
 * @param declaration - the parameters of a notebook
 * @param values - their values, in SI
 *
 * @public
 */
export function parameterTexts<P extends Parameters>(
  declaration: P,
  values: ParameterValues<P>,
): readonly ParameterText[] {
  requireShape({ declaration, values }, { declaration: record, values: record });
  return Object.entries(declaration).map(([name, parameter]) => {
    requireShape(parameter, parameterShape, `declaration.${name}`);
    const value: unknown = values[name as keyof P];
    requireValue(parameter, value, `values.${name}`);
    return { name: optionName(name), label: parameter.label, text: valueText(parameter, value) };
  });
}

const namedPart: Shape = { name: someText };
const valueShapes: Readonly<Record<Parameter['kind'], Shape>> = {
  quantity: '',
  integer: '',
  choice: someText,
  part: namedPart,
  parts: listOf(namedPart),
};

function requireValue(
  { kind }: Parameter,
  value: unknown,
  field: string,
): asserts value is ParameterValue<Parameter> {
  requireShape(value, valueShapes[kind], field);
}

function valueText(parameter: Parameter, value: ParameterValue<Parameter>): string {
  if (typeof value === 'number')
    return parameter.kind === 'quantity'
      ? formatQuantity(value, parameter.dimension, parameter.unit, 6)
      : roundedText(value, 15);
  if (typeof value === 'string') return value;
  return 'name' in value ? value.name : value.map(({ name }) => name).join(', ');
}

function inUnit({ unit }: QuantityParameter, value: number): string {
  const digits = roundedText(value, 6);
  return unit === '' || unit === '%' || unit === '°' ? `${digits}${unit}` : `${digits} ${unit}`;
}
