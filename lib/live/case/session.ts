import type { Notebook } from '../../page/notebook.js';
import { ParameterError } from '../../page/parameters/parameter-error.js';
import { optionName } from '../../page/parameters/parameter-text.js';
import { buildParameter } from '../../page/parameters/read-parameters.js';
import type { Bench } from './bench.js';
import { type Case, caseOf, settingsWith, startOf } from './case.js';
import { type Choices, chosenBuild, otherChoices, ownChoices, useChoice } from './choices.js';
import { expectedFailure } from './failure.js';
import { fileInUse } from './measured-use.js';

/** All that changes while a page is read. */
export interface Session {
  readonly notebook: Notebook;
  readonly bench: Bench;
  /** The case that others are compared with. */
  start: Case;
  /** The case on the screen. */
  now: Case;
  /** What the address asks for; whether it is possible is not known yet. */
  address: Choices | undefined;
  /** Options that this page goes without: chosen on another page, and nothing that this one accepts. */
  readonly without: Map<string, string>;
  /** What stands in controls of this page and it does not accept: no choice, so it goes to no other page and is not kept. */
  refused: Choices;
}

/** Opens the page of a notebook at its start. */
export function openSession(notebook: Notebook, bench: Bench): Session {
  const start = startOf(notebook, bench.start, bench.texts);
  return { notebook, bench, start, now: start, address: undefined, without: new Map(), refused: {} };
}

/** Comes to a page, perhaps again: what was chosen and changed elsewhere holds here too, as far as the page accepts it. */
export function arrive(session: Session): void {
  const { notebook, bench, without } = session;
  if (session.start.file !== bench.start) session.start = startOf(notebook, bench.start, bench.texts);
  without.clear();
  session.refused = {};
  for (const [name, choice] of Object.entries(ownChoices(notebook.parameters, bench.choices))) {
    const fault = faultOf(session, name, choice);
    if (fault !== undefined) without.set(name, fault);
  }
}

/** Why a page does not accept a choice, where it does not. */
export function faultOf(
  { notebook, bench }: Session,
  name: string,
  choice: Choices[string],
): string | undefined {
  const one = Object.entries(notebook.parameters).filter(([key]) => optionName(key) === name);
  try {
    const file = fileInUse(bench, bench.choices);
    settingsWith({ ...notebook, parameters: Object.fromEntries(one) }, file, { [name]: choice });
    return undefined;
  } catch (error) {
    if (error instanceof ParameterError) return error.message;
    throw error;
  }
}

/**
 * The case that the reader asks for.
 *
 * @throws ParameterError, InputError, ConvergenceError where it is not possible
 */
export function caseWanted({ notebook, bench, start, address, without, refused }: Session): Case {
  const choices = address ?? bench.choices;
  const build = chosenBuild(choices);
  const texts = address === undefined ? { ...ownChoices(notebook.parameters, choices), ...refused } : choices;
  const own = Object.entries(texts).filter(
    ([name]) =>
      !without.has(name) &&
      name !== useChoice &&
      (name !== buildParameter || buildParameter in notebook.parameters),
  );
  const file = fileInUse(bench, choices);
  const ofStart = file === start.file;
  if (ofStart && own.length === 0 && build === undefined) return start;
  try {
    return caseOf(notebook, file, { ...bench.texts, ...Object.fromEntries(own) }, build);
  } catch (error) {
    // Parts that say too little say so whatever is chosen; another build may say more.
    if (ofStart && !start.answered && expectedFailure(error)) return start;
    throw error;
  }
}

/** Makes the choices of the address those of the reader. */
export function keepAddress(session: Session): void {
  const { notebook, bench, address } = session;
  if (address !== undefined) {
    // An address says all of its page, and so whether shocks are as measured there.
    const { [useChoice]: _before, ...others } = otherChoices(notebook.parameters, bench.choices);
    bench.choices = { ...others, ...address };
  }
  session.address = undefined;
}

/** What a setting is while the reader chooses nothing for it, as far as that can be said. */
export function unchosen({ notebook, bench }: Session, name: string): Choices[string] | undefined {
  const build = name === buildParameter ? undefined : chosenBuild(bench.choices);
  try {
    return settingsWith(notebook, fileInUse(bench, bench.choices), bench.texts, build)[name];
  } catch (error) {
    if (error instanceof ParameterError) return undefined;
    throw error;
  }
}
