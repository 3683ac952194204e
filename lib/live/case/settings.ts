import { optionName } from '../../page/parameters/parameter-text.js';
import type {
  Parameter,
  Parameters,
  ParameterValue,
  ParameterValues,
} from '../../page/parameters/parameters.js';
import { fromSi } from '../../units/quantity-text.js';
import { findUnit } from '../../units/unit-table.js';

/** Values of parameters as a user would write them on the command line, by option name. */
export type Settings = Readonly<Record<string, string | readonly string[]>>;

/** The values of all parameters of a declaration as texts. */
export function settingsOf<P extends Parameters>(declaration: P, values: ParameterValues<P>): Settings {
  return Object.fromEntries(
    Object.entries(declaration).map(([name, parameter]) => [
      optionName(name),
      settingText(parameter, values[name as keyof P] as ParameterValue<Parameter>),
    ]),
  );
}

/** A number with the unit of its parameter. */
export function quantityText(value: number, unit: string): string {
  return unit === '' ? String(value) : `${value} ${unit}`;
}

function settingText(parameter: Parameter, value: ParameterValue<Parameter>): string | readonly string[] {
  if (typeof value === 'string') return value;
  if (typeof value !== 'number') return 'name' in value ? value.name : value.map(({ name }) => name);
  if (parameter.kind !== 'quantity') return String(value);
  const unit = findUnit(parameter.dimension, parameter.unit);
  const inUnit = unit === undefined ? value : fromSi(value, unit);
  return quantityText(Number(inUnit.toPrecision(6)), parameter.unit);
}
