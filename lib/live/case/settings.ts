import { optionName } from '../../page/parameters/parameter-text.js';
import type {
  Parameter,
  Parameters,
  ParameterValue,
  ParameterValues,
} from '../../page/parameters/parameters.js';
import { readParameterValues } from '../../page/parameters/read-parameters.js';
import type { Parts } from '../../parts/parts.js';
import { findUnit, fromSi } from '../../units/index.js';

/** The value of every parameter as a user would write it on the command line, by option name. */
export type Settings = Readonly<Record<string, string | readonly string[]>>;

/** The values of parameters as texts. */
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

/** The settings that differ from those at the start, as the fragment of an address; empty where none does. */
export function fragmentOf(settings: Settings, start: Settings): string {
  const changed = new URLSearchParams();
  for (const [name, value] of Object.entries(settings)) {
    if (String(value) === String(start[name] ?? '')) continue;
    for (const text of typeof value === 'string' ? [value] : value) changed.append(name, text);
  }
  return changed.toString();
}

/** The settings that the fragment of an address asks for; parameters that it does not name stay as at the start. */
export function settingsFrom(fragment: string, declaration: Parameters, start: Settings): Settings {
  const asked = new URLSearchParams(fragment.replace(/^#/u, ''));
  const several = new Set(
    Object.entries(declaration)
      .filter(([, { kind }]) => kind === 'parts')
      .map(([name]) => optionName(name)),
  );
  const settings: Record<string, string | readonly string[]> = { ...start };
  for (const name of new Set(asked.keys())) {
    if (name === '') continue;
    const texts = asked.getAll(name);
    settings[name] = several.has(name) || texts.length > 1 ? texts : (texts[0] ?? '');
  }
  return settings;
}

/**
 * Settings for another parts file: parts that it does not have are left open, and so are numbers that a file may say and nobody changed.
 */
export function settingsFor(
  parts: Parts,
  declaration: Parameters,
  { settings, before }: { readonly settings: Settings; readonly before: Parts },
): Settings {
  const kept = Object.entries(declaration).flatMap(([name, parameter]) => {
    const setting = settings[optionName(name)];
    if (setting === undefined || setting === beginning(parameter, before)) return [];
    if (parameter.kind !== 'part' && parameter.kind !== 'parts')
      return [[optionName(name), setting] as const];
    const known = new Set(parts[parameter.list].map((part) => part.name));
    const left = (typeof setting === 'string' ? [setting] : setting).filter((one) => known.has(one));
    return left.length === 0 ? [] : [[optionName(name), left] as const];
  });
  return Object.fromEntries(kept);
}

/** The setting that a parameter begins with where the file may say it. */
function beginning(parameter: Parameter, parts: Parts): Settings[string] | undefined {
  if (parameter.kind !== 'quantity' || parameter.inFile === undefined) return undefined;
  const { one } = readParameterValues({ one: parameter }, {}, parts);
  return settingText(parameter, one);
}

function settingText(parameter: Parameter, value: ParameterValue<Parameter>): string | readonly string[] {
  if (typeof value === 'string') return value;
  if (typeof value !== 'number') return 'name' in value ? value.name : value.map(({ name }) => name);
  if (parameter.kind !== 'quantity') return String(value);
  const unit = findUnit(parameter.dimension, parameter.unit);
  const inUnit = unit === undefined ? value : fromSi(value, unit);
  return quantityText(Number(inUnit.toPrecision(6)), parameter.unit);
}
