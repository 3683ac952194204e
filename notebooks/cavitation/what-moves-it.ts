import { InputError } from '../../lib/base/input-error.js';
import { type DamperModel, damperModel } from '../../lib/damper/damper-model.js';
import type { TableBlock } from '../../lib/page/index.js';
import { formatQuantity } from '../../lib/units/index.js';
import { strokeForces, strokeOf } from '../base/after-onset.js';
import { celsius, shaftSpeed } from '../base/wording.js';
import {
  type ClosedBuild,
  closedBuild,
  type Direction,
  earliestRelease,
  onsetOf,
  releasingAt,
  thicker,
} from './cases.js';

/** How much wider the body of the table is [m]. */
const wider = 1e-3;

/** One change of the shock. */
export interface Change {
  readonly name: string;
  readonly model: DamperModel;
}

/** How a shock can be closed: words, and where the shaft is as a part of the stroke. */
export const habits = [
  { name: 'fully out', share: 0 },
  { name: 'half way in', share: 0.5 },
  { name: 'fully in', share: 1 },
] as const;

/** The shock closed with its shaft elsewhere; a fill that cannot be poured so is left out. */
export function closedElsewhere({ build }: ClosedBuild, temperature: number): readonly Change[] {
  return habits.flatMap(({ name, share }) => {
    try {
      const { model } = closedBuild(build, temperature, share * build.shock.stroke);
      return [{ name: `closed ${name}`, model }];
    } catch (error) {
      if (error instanceof InputError) return [];
      throw error;
    }
  });
}

/** What moves the onset: one change at a time. */
export function changes(
  closed: ClosedBuild,
  temperature: number,
  [coldest, hottest]: readonly [number, number],
): readonly Change[] {
  const { model, build } = closed;
  const { damper, fluid } = model;
  const { gas, piston } = damper;
  const vented = gas.rooms.some((room) => room.vented);
  const pressed = { ...gas.closing, pressure: 2 * gas.closing.pressure };
  const roomier = gas.rooms.map((room) => ({ ...room, volume: 2 * room.volume }));
  const body = { bore: damper.bore + wider, piston: { ...piston, diameter: piston.diameter + wider } };
  return [
    { name: 'as it is', model },
    ...closedElsewhere(closed, temperature),
    ...(vented
      ? []
      : [
          {
            name: 'twice the gas pressure',
            model: damperModel({ ...damper, gas: { ...gas, closing: pressed } }, fluid),
          },
        ]),
    { name: 'twice as much gas', model: damperModel({ ...damper, gas: { ...gas, rooms: roomier } }, fluid) },
    {
      name: `bore ${formatQuantity(wider, 'length', 'mm', 1)} wider, same holes`,
      model: damperModel({ ...damper, ...body }, fluid),
    },
    { name: 'oil twice as thick', model: thicker(model, 2) },
    ...[coldest, hottest].map((other) => ({
      name: `at ${celsius(other)}`,
      model: closedBuild(build, other).model,
    })),
    ...(build.shock.compensator?.airReleasePressure === undefined
      ? [{ name: 'air out of the oil at 0.2 bar', model: releasingAt(model, earliestRelease) }]
      : []),
  ];
}

/** The changes in numbers. */
export function changesTable(made: readonly Change[], direction: Direction, speed: number): TableBlock {
  const sign = direction === 'compression' ? 1 : -1;
  const at = shaftSpeed(speed);
  const travel = Math.min(...made.map(({ model }) => strokeOf(model, sign * speed).travel));
  return {
    kind: 'table',
    id: 'what-moves-it',
    title: 'What moves it',
    note: `Damping of the oil alone. The last two columns are for a stroke at ${at} ${sign > 0 ? 'from fully out' : 'from all the way in'}; an empty cell means that the gas is weaker there than the pressure at which air comes out, so that the shock holds a cavity before it moves.`,
    table: {
      columns: [
        { label: 'Shock', unit: '' },
        { label: 'Begins at', unit: 'mm/s', dimension: 'speed' },
        { label: 'Damping there', unit: 'N', dimension: 'force' },
        { label: `After ${formatQuantity(travel, 'length', 'mm', 2)}`, unit: 'N', dimension: 'force' },
        { label: 'At the end', unit: 'N', dimension: 'force' },
      ],
      rows: made.map(({ name, model }) => {
        const onset = onsetOf(model, direction, 0);
        if (onset.speed === 0) return [name, 0, 0, null, null];
        const { afterTravel, end } = strokeForces(model, sign * speed);
        return [
          name,
          onset.speed,
          onset.damping,
          Math.abs(afterTravel.dampingForce),
          Math.abs(end.dampingForce),
        ];
      }),
    },
  };
}
