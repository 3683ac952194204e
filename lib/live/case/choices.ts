import { optionName } from '../../page/parameters/parameter-text.js';
import type { Parameters, PartList } from '../../page/parameters/parameters.js';
import { buildParameter } from '../../page/parameters/read-parameters.js';
import type { Parts } from '../../parts/parts.js';
import type { Settings } from './settings.js';

/**
 * What a reader has chosen, by option name; all else follows the build and the parts file. One option has one meaning on all pages, so that a
 * choice is made once.
 */
export type Choices = Settings;

/** The choice whether measured builds are taken as measured; it belongs to the parts and not to a page. */
export const useChoice = 'use';

/** Whether measured builds are to be taken as measured. */
export function wantsMeasured(choices: Choices): boolean {
  return choices[useChoice] === 'measured';
}

/** The build chosen, where one is. */
export function chosenBuild(choices: Choices): string | undefined {
  const build = choices[buildParameter];
  return typeof build === 'string' ? build : build?.[0];
}

/** The choices that a page has parameters for. */
export function ownChoices(declaration: Parameters, choices: Choices): Choices {
  const own = new Set(Object.keys(declaration).map(optionName));
  return Object.fromEntries(Object.entries(choices).filter(([name]) => own.has(name)));
}

/** Choices with those of one page taken out: its own, and the build. */
export function otherChoices(declaration: Parameters, choices: Choices): Choices {
  const own = new Set([...Object.keys(declaration).map(optionName), buildParameter]);
  return Object.fromEntries(Object.entries(choices).filter(([name]) => !own.has(name)));
}

/** The choices that a page shows, as the fragment of an address: its own, the build, and whether shocks are as measured. Empty where there are none. */
export function fragmentOf(declaration: Parameters, choices: Choices): string {
  const written = new URLSearchParams();
  const build = chosenBuild(choices);
  const shown = {
    ...(wantsMeasured(choices) ? { [useChoice]: 'measured' } : {}),
    ...(build === undefined ? {} : { [buildParameter]: build }),
    ...ownChoices(declaration, choices),
  };
  for (const [name, value] of Object.entries(shown))
    for (const text of typeof value === 'string' ? [value] : value) written.append(name, text);
  return written.toString();
}

/** The choices that the fragment of an address names, also such as the page has no parameter for. */
export function choicesIn(fragment: string, declaration: Parameters): Choices {
  const asked = new URLSearchParams(fragment);
  const several = new Set(
    Object.entries(declaration)
      .filter(([, { kind }]) => kind === 'parts')
      .map(([name]) => optionName(name)),
  );
  const named = [...new Set(asked.keys())].filter((name) => name !== '');
  return Object.fromEntries(
    named.map((name) => {
      const texts = asked.getAll(name);
      return [name, several.has(name) || texts.length > 1 ? texts : (texts[0] ?? '')];
    }),
  );
}

/** Choices for another parts file: parts that it does not have are left open. */
export function choicesFor(parts: Parts, declarations: readonly Parameters[], choices: Choices): Choices {
  const lists = new Map<string, PartList>([[buildParameter, 'builds']]);
  for (const declaration of declarations)
    for (const [name, parameter] of Object.entries(declaration))
      if ('list' in parameter) lists.set(optionName(name), parameter.list);
  return Object.fromEntries(
    Object.entries(choices).flatMap(([name, choice]) => {
      const list = lists.get(name);
      if (list === undefined) return [[name, choice] as const];
      const known = new Set(parts[list].map((part) => part.name));
      const left = (typeof choice === 'string' ? [choice] : choice).filter((one) => known.has(one));
      if (left.length === 0) return [];
      return [[name, typeof choice === 'string' ? choice : left] as const];
    }),
  );
}
