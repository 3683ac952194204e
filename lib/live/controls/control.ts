import { capital } from '../../page/blocks/capital.js';
import type { Html } from '../../page/html/html.js';
import { html } from '../../page/html/html.js';
import { prose } from '../../page/html/prose.js';
import { acceptedText, optionName } from '../../page/parameters/parameter-text.js';
import type {
  Parameter,
  PartParameter,
  QuantityParameter,
  SeveralPartsParameter,
} from '../../page/parameters/parameters.js';
import type { Parts } from '../../parts/parts.js';
import { quantityText } from '../case/settings.js';
import { domNodes } from '../document/patch.js';

/** The control of one parameter: it shows a setting, and tells of a new one as the reader moves it. */
export interface Control {
  readonly element: Element;
  show(setting: string | readonly string[]): void;
}

type SettingListener = (setting: string | readonly string[]) => void;

/** Makes the control of a parameter. */
export function control(
  name: string,
  parameter: Parameter,
  parts: Parts,
  listener: SettingListener,
): Control {
  const id = `set-${optionName(name)}`;
  switch (parameter.kind) {
    case 'quantity':
      return numberControl(id, parameter, parameter.unit, parameter.step, listener);
    case 'integer':
      return numberControl(id, parameter, '', 1, listener);
    case 'choice':
      return selectControl(id, parameter, parameter.options, listener);
    case 'part':
      return selectControl(id, parameter, partNames(parts, parameter), listener);
    case 'parts':
      return severalControl(id, parameter, partNames(parts, parameter), listener);
  }
}

function partNames(parts: Parts, { list }: PartParameter | SeveralPartsParameter): readonly string[] {
  return parts[list].map(({ name }) => name);
}

function framed(id: string, parameter: Parameter, kind: string, inside: Html): Element {
  const [element] = domNodes(
    html`<div class="control ${kind}">${inside}<p class="help" id="${id}-help">${helpText(parameter)}</p></div>`,
  );
  if (!(element instanceof Element)) throw new TypeError('a control is one element');
  return element;
}

/** What the parameter does, with its range where the control does not show it. */
function helpText(parameter: Parameter): Html {
  const ranged = parameter.kind === 'quantity' || parameter.kind === 'integer';
  return prose(ranged ? `${parameter.help} ${capital(acceptedText(parameter))}.` : parameter.help);
}

function numberControl(
  id: string,
  parameter: QuantityParameter | (Parameter & { readonly kind: 'integer' }),
  unit: string,
  step: number,
  listener: SettingListener,
): Control {
  const { label, min, max } = parameter;
  const shownUnit = unit === '' ? '' : html` <span class="unit">${unit}</span>`;
  const limits = (type: 'number' | 'range', own: string, described: string): Html =>
    html`<input type="${type}" id="${own}" min="${min}" max="${max}" step="${step}" aria-describedby="${described}" autocomplete="off">`;
  const element = framed(
    id,
    parameter,
    'number',
    html`<label for="${id}">${label}</label><span class="value">${limits('number', id, `${id}-help`)}${shownUnit}</span>${limits('range', `${id}-slider`, `${id}-help`)}`,
  );
  const [field, slider] = element.querySelectorAll('input');
  if (field === undefined || slider === undefined) throw new TypeError('a number has a field and a slider');
  slider.setAttribute('aria-label', `${label}, slider`);
  let mirrored = '';
  const mirror = (text: string): void => {
    if (text === mirrored && slider.value === text) return;
    mirrored = text;
    slider.value = text;
    slider.setAttribute('aria-valuetext', quantityText(Number(text), unit));
  };
  slider.addEventListener('input', () => {
    field.value = slider.value;
    mirror(slider.value);
    listener(withUnit(slider.value, unit));
  });
  field.addEventListener('input', () => {
    if (field.value === '') return;
    mirror(field.value);
    listener(withUnit(field.value, unit));
  });
  return {
    element,
    show(setting) {
      // The setting is a number and the unit of this control, or what a reader wrote into the address.
      const number = String(setting).split(' ')[0] ?? '';
      if (document.activeElement !== field || field.value === '') field.value = number;
      mirror(number);
    },
  };
}

function withUnit(number: string, unit: string): string {
  return unit === '' ? number : `${number} ${unit}`;
}

function selectControl(
  id: string,
  parameter: Parameter,
  options: readonly string[],
  listener: SettingListener,
): Control {
  const element = framed(
    id,
    parameter,
    'one',
    html`<label for="${id}">${parameter.label}</label><select id="${id}" aria-describedby="${id}-help" autocomplete="off">${options.map((name) => html`<option value="${name}">${name}</option>`)}</select>`,
  );
  const select = element.querySelector('select');
  if (select === null) throw new TypeError('a choice has a list');
  select.addEventListener('input', () => listener(select.value));
  return {
    element,
    show(setting) {
      select.value = String(setting);
    },
  };
}

function severalControl(
  id: string,
  parameter: SeveralPartsParameter,
  names: readonly string[],
  listener: SettingListener,
): Control {
  const boxes = names.map(
    (name, index) =>
      html`<label for="${id}-${index}"><input type="checkbox" id="${id}-${index}" value="${name}" autocomplete="off"> ${name}</label>`,
  );
  const element = framed(
    id,
    parameter,
    'several',
    html`<fieldset aria-describedby="${id}-help"><legend>${parameter.label}</legend><div class="boxes">${boxes}</div></fieldset>`,
  );
  const inputs = [...element.querySelectorAll('input')];
  const limit = (): void => {
    const count = inputs.filter(({ checked }) => checked).length;
    // One stays chosen, and no more can be chosen than a picture can tell apart.
    for (const input of inputs) input.disabled = input.checked ? count === 1 : count >= parameter.atMost;
  };
  element.addEventListener('input', () => {
    limit();
    listener(inputs.filter(({ checked }) => checked).map(({ value }) => value));
  });
  return {
    element,
    show(setting) {
      for (const input of inputs) input.checked = setting.includes(input.value);
      limit();
    },
  };
}
