import { standardGravity } from '../../lib/base/constants.js';
import { type ClosedShock, closeShock } from '../../lib/fill/chamber/closed-shock.js';
import {
  conditionAtClosing,
  type FillCondition,
  lockPosition,
} from '../../lib/fill/chamber/pressure-inside.js';
import { staticForce } from '../../lib/fill/chamber/static-force.js';
import type { Compensator } from '../../lib/gas/compensator.js';
import type { Axis, Figure, LinePoint } from '../../lib/plot/index.js';
import { lineChart } from '../../lib/plot/index.js';
import { grams, millilitres, millimetres } from '../base/bench-wording.js';
import { sealRules } from '../base/seal-words.js';
import { celsius } from '../base/wording.js';
import { type BuiltShock, warmedTo } from '../build-sheet/built-shock.js';
import type { Habit } from './habits.js';

const steps = 40;
/** Past this part of the way to the lock the curve is a wall; drawing on would hide the rest. */
const drawnToLock = 0.97;

const shaftAxis: Axis = { label: 'Shaft in', unit: 'mm', dimension: 'length' };
const pushAxis: Axis = { label: 'Push of the gas, as a scale shows it', unit: 'g' };

/** What a scale shows for a force [g]. */
const onScale = (force: number): number => (1e3 * force) / standardGravity;

/** Push over the stroke, as far as the shaft goes before it locks. */
function pushCurve(
  shock: ClosedShock,
  condition: FillCondition = conditionAtClosing(shock),
): readonly LinePoint[] {
  const { stroke } = shock.chamber;
  const lock = lockPosition(shock, condition);
  // Oil that grew since may lock the shaft before the place of closing.
  const free = Math.min(shock.closing.position, lock > 0 ? drawnToLock * lock : 0);
  const end = Math.min(
    stroke,
    free + drawnToLock * Math.max(lock - Math.max(free, shock.closing.position), 0),
  );
  if (end <= 0) return [];
  return Array.from({ length: steps + 1 }, (_, step) => {
    // The last place exactly: a rounding beyond the stroke is no place.
    const x = Math.min((end * step) / steps, stroke);
    return { x, y: onScale(staticForce(shock, x, condition)) };
  });
}

/** A gas force at a place, in words. */
function pushText(shock: ClosedShock, position: number): string {
  return lockPosition(shock) <= position ? 'a lock' : grams(staticForce(shock, position));
}

/** The same shock by the habit of closing it. */
export function closingFigure(built: BuiltShock, habits: readonly Habit[]): Figure {
  const { stroke } = built.shock.chamber;
  const cases = habits.map(({ name, built: { shock } }) => ({ name, shock }));
  const ends = cases.map(
    ({ name, shock }) => `${pushText(shock, stroke)} fully in and ${pushText(shock, 0)} fully out if ${name}`,
  );
  return lineChart({
    id: 'push-by-closing',
    title: 'Push of the resting shaft, by where the cap was closed',
    alt: `The gas pushes with ${ends.join('; ')}. Below 0 g it sucks the shaft in.`,
    x: shaftAxis,
    y: pushAxis,
    series: cases.map((one) => ({
      name: one.name,
      points: pushCurve(one.shock),
    })),
    rules: sealRules(built.assembled.seal),
  });
}

/** Part of a foam that is gas, and stiffness of a rubber cup, where the parts file has neither; examples of our own. */
const exampleGasFraction = 0.85;
const exampleStiffness = 15e9;

/** Ways to make room that take the same volume as the build's own. */
function rivals(volume: number): readonly { readonly name: string; readonly compensator: Compensator }[] {
  const stiffness = exampleStiffness;
  return [
    { name: 'air pocket', compensator: { kind: 'air-pocket', volume } },
    { name: 'sealed bladder', compensator: { kind: 'bladder', volume, stiffness, vented: false } },
    { name: 'vented bladder', compensator: { kind: 'bladder', volume, stiffness, vented: true } },
    {
      name: 'foam',
      compensator: { kind: 'foam', volume, gasFraction: exampleGasFraction, stiffness: 0 },
    },
  ];
}

/** One volume, several ways to fill it. */
export function compensatorFigure(built: BuiltShock, volume: number): Figure {
  const { shock } = built;
  const { stroke } = shock.chamber;
  const cases = rivals(volume).map(({ name, compensator }) => ({
    name,
    shock: closeShock(shock.chamber, compensator, shock.closing),
  }));
  const ends = cases.map((one) => `${one.name} ${pushText(one.shock, stroke)}`);
  return lineChart({
    id: 'push-by-compensator',
    title: 'Push of the resting shaft, by what makes room',
    alt: `All take the same ${millilitres(volume)} and are closed ${millimetres(shock.closing.position)} in. With the shaft fully in: ${ends.join(', ')}. Sealed with nothing it locks where it was closed.`,
    x: shaftAxis,
    y: pushAxis,
    series: cases.map((one) => ({ name: one.name, points: pushCurve(one.shock) })),
    rules: [{ axis: 'x', value: shock.closing.position, label: 'nothing: locks' }],
  });
}

/** What warm oil does to a closed shock. */
export function heatFigure(built: BuiltShock, temperatures: readonly number[]): Figure {
  const cases = temperatures.map((temperature) => ({
    temperature,
    condition: warmedTo(built, temperature),
  }));
  const { stroke } = built.shock.chamber;
  const ends = cases.map(({ temperature, condition }) => {
    const locks = lockPosition(built.shock, condition) <= stroke;
    return `${locks ? 'a lock' : grams(staticForce(built.shock, stroke, condition))} at ${celsius(temperature)}`;
  });
  return lineChart({
    id: 'push-by-temperature',
    title: `Push of the resting shaft, closed at ${celsius(built.closing.temperature)}`,
    alt: `With the shaft fully in the gas pushes with ${ends.join(', ')}.`,
    x: shaftAxis,
    y: pushAxis,
    series: cases.flatMap(({ temperature, condition }) => {
      const points = pushCurve(built.shock, condition);
      return points.length === 0 ? [] : [{ name: celsius(temperature), points }];
    }),
    rules: sealRules(built.assembled.seal),
  });
}
