import { InputError } from '../../lib/base/input-error.js';
import type { Build } from '../../lib/parts/parts.js';
import { dampingSpan } from '../base/after-onset.js';
import { modelsOf } from '../base/chosen-shock.js';
import { landedOrLocked } from '../base/landed.js';
import { builtShock } from '../build-sheet/built-shock.js';
import { endStates } from '../fill-and-bleed/habits.js';
import type { Change } from './changes.js';
import type { Measure, Symptom } from './symptoms.js';

/** What a build is looked at with. */
export interface Conditions {
  readonly temperature: number;
  readonly bench: number;
  readonly slow: number;
  readonly fast: number;
  readonly drop: number;
}

/** Damping [N], stroke that the landing leaves [m], push fully in [N]; not given where there is none, since no spring is named or the shaft locks. */
export type Measured = Readonly<Record<'slow' | 'fast', number>> &
  Readonly<Record<'left' | 'push', number | undefined>>;

export function measured(build: Build, { temperature, bench, slow, fast, drop }: Conditions): Measured {
  const { model } = modelsOf(build, temperature);
  const landing = build.spring === undefined ? undefined : landedOrLocked(build, temperature, drop);
  return {
    slow: Math.abs(dampingSpan(model, -slow).damping),
    fast: dampingSpan(model, fast).damping,
    left: landing && build.shock.stroke - landing.outcome.largestTravel.value,
    push: endStates(builtShock(build, bench), bench).pushIn,
  };
}

/** A change with what it does. */
export interface Effect {
  readonly name: string;
  readonly after: Measured;
  readonly verdict: Verdict;
  /** How much of what the symptom asks for first it gives, in its own unit; below 0 where it takes some away. */
  readonly gain: number;
}

export type Verdict = 'helps' | 'works against it' | 'helps and works against it' | 'makes no difference';

/** Less than this counts as nothing: 1 % of a damping, 0.1 mm, 1 g. */
const nothing: Readonly<Record<Measure, number>> = { slow: 0.01, fast: 0.01, left: 1e-4, push: 0.01 };

/** More (above 0) or less of a measure: dampings as a part, the others as they are. */
export function changeIn(measure: Measure, before: Measured, after: Measured): number {
  const [from, to] = [before[measure], after[measure]];
  if (from === undefined || to === undefined) return 0;
  return measure === 'slow' || measure === 'fast' ? to / from - 1 : to - from;
}

function signOf(measure: Measure, before: Measured, after: Measured): number {
  const change = changeIn(measure, before, after);
  return Math.abs(change) < nothing[measure] ? 0 : Math.sign(change);
}

/** Whether a change gives what the symptom asks for. */
export function verdictOf({ asks }: Symptom, before: Measured, after: Measured): Verdict {
  const signs = asks.map(({ measure, sign }) => sign * signOf(measure, before, after));
  const [good, bad] = [signs.some((sign) => sign > 0), signs.some((sign) => sign < 0)];
  if (good) return bad ? 'helps and works against it' : 'helps';
  return bad ? 'works against it' : 'makes no difference';
}

/** What each change does; one that cannot be filled so is left out. */
export function effectsOf(
  changes: readonly Change[],
  before: Measured,
  symptom: Symptom,
  at: Conditions,
): { readonly effects: readonly Effect[]; readonly impossible: readonly string[] } {
  const impossible: string[] = [];
  const effects = changes.flatMap(({ name, build }): readonly Effect[] => {
    try {
      const after = measured(build, at);
      const [first] = symptom.asks;
      const gain = first === undefined ? 0 : first.sign * changeIn(first.measure, before, after);
      return [{ name, after, verdict: verdictOf(symptom, before, after), gain }];
    } catch (error) {
      if (!(error instanceof InputError)) throw error;
      impossible.push(name);
      return [];
    }
  });
  return { effects, impossible };
}
