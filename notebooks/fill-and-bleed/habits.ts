import { standardGravity } from '../../lib/base/constants.js';
import { InputError } from '../../lib/base/input-error.js';
import { cavitationOnset } from '../../lib/damper/cavitation-onset.js';
import type { DamperModel } from '../../lib/damper/damper-model.js';
import { lockPosition } from '../../lib/fill/chamber/pressure-inside.js';
import { staticForce } from '../../lib/fill/chamber/static-force.js';
import { gasPressure } from '../../lib/gas/gas-state.js';
import type { TableBlock } from '../../lib/page/index.js';
import { type BuiltShock, builtShock, damperAt } from '../build-sheet/built-shock.js';
import { cavitatingDirection } from '../cavitation/cases.js';

/** What a closed shock does at the ends of its stroke; SI, `undefined` where the shaft locks before. */
export interface EndStates {
  readonly pushOut: number | undefined;
  readonly pushIn: number | undefined;
  /** Absolute gas pressure with the shaft fully out. */
  readonly gasOut: number | undefined;
  /** Shaft speed at which cavitation begins with the shaft fully out, and the force of the oil there; `undefined` where nothing cavitates. */
  readonly onset: { readonly speed: number; readonly damping: number } | undefined;
}

/** A way to close the shock. */
export interface Habit extends EndStates {
  readonly name: string;
  readonly position: number;
  readonly built: BuiltShock;
}

/** The ends of a shock as it was closed. */
export function endStates(built: BuiltShock, temperature: number): EndStates {
  const { shock } = built;
  const push = (position: number) =>
    shock.gasVolume === 0 || lockPosition(shock) <= position ? undefined : staticForce(shock, position);
  const pushOut = push(0);
  return {
    pushOut,
    pushIn: push(shock.chamber.stroke),
    ...(pushOut === undefined
      ? { gasOut: undefined, onset: undefined }
      : {
          gasOut: shock.closing.ambientPressure + pushOut / shock.shaftArea,
          onset: onsetOut(damperAt(built, temperature)),
        }),
  };
}

/** Where cavitation begins with the shaft fully out. */
export function onsetOut(model: DamperModel): EndStates['onset'] {
  const direction = cavitatingDirection(model);
  if (direction === undefined || model.gas.capacity <= 0 || gasPressure(model.gas, 0) <= 0) return undefined;
  const onset = cavitationOnset(model, direction, 0);
  return onset && { speed: Math.abs(onset.speed), damping: Math.abs(onset.dampingForce) };
}

/** The shock as it is closed, and closed with its shaft fully out, half way and fully in; a fill that cannot be poured so is left out. */
export function closingHabits(built: BuiltShock, temperature: number, freeAir: number): readonly Habit[] {
  const { build, closing } = built;
  const { stroke } = build.shock;
  const places = [
    { name: 'closed fully out', position: 0 },
    { name: 'closed half way in', position: stroke / 2 },
    { name: 'closed fully in', position: stroke },
  ];
  return places.flatMap((place): Habit[] => {
    try {
      const same = Math.abs(place.position - closing.position) < 1e-9;
      const elsewhere = same ? built : builtShock(build, temperature, { closeAt: place.position, freeAir });
      return [{ ...place, built: elsewhere, ...endStates(elsewhere, temperature) }];
    } catch (error) {
      if (error instanceof InputError) return [];
      throw error;
    }
  });
}

const endColumns = [
  { label: 'Push fully in', unit: 'g', digits: 2 },
  { label: 'Push fully out', unit: 'g', digits: 2 },
  { label: 'Gas, shaft out', unit: 'bar', dimension: 'pressure', digits: 3 },
  { label: 'Cavitates from', unit: 'mm/s', dimension: 'speed' },
  { label: 'Damping there', unit: 'N', dimension: 'force' },
] as const;

const onScale = (push: number | undefined) => (push === undefined ? 'locks' : (1e3 * push) / standardGravity);

/** A row of the table of {@link endTable}. */
export function endRow({ pushIn, pushOut, gasOut, onset }: EndStates): readonly (number | string | null)[] {
  return [onScale(pushIn), onScale(pushOut), gasOut ?? null, onset?.speed ?? null, onset?.damping ?? null];
}

/** Pushes, gas and onset of several shocks. */
export function endTable(
  head: Pick<TableBlock, 'id' | 'title' | 'note'>,
  columns: TableBlock['table']['columns'],
  rows: TableBlock['table']['rows'],
): TableBlock {
  return { kind: 'table', ...head, table: { columns: [...columns, ...endColumns], rows } };
}
