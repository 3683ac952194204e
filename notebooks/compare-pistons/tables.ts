import { cavitationOnset } from '../../lib/damper/cavitation-onset.js';
import { packSpeed } from '../../lib/damper/pack-speed.js';
import { totalHoleArea } from '../../lib/flow/piston/piston.js';
import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { assembleShock } from '../../lib/parts/index.js';
import type { Cell, Column } from '../../lib/plot/chart/table.js';
import { formatQuantity } from '../../lib/units/index.js';
import { strokeForces, strokeOf } from '../base/after-onset.js';
import { pointAt } from '../base/oil-forces.js';
import { fastestReboundOf } from '../base/shaft-speeds.js';
import { shaftSpeed } from '../base/wording.js';
import { holdsBack, type PistonCase, type Speeds } from './figures.js';

const force = (label: string): Column => ({ label, unit: 'N', dimension: 'force' });
const speed = (label: string): Column => ({ label, unit: 'mm/s', dimension: 'speed' });
const piston: Column = { label: 'Piston', unit: '' };

/** Damping of each piston at speeds that happen; the sentence says what they are. */
export function forceTable(cases: readonly PistonCase[], at: Speeds, speeds: string): TableBlock {
  const [first] = cases;
  const travel = first === undefined ? 0 : strokeOf(first.model, at.fast).travel;
  const guess =
    first !== undefined && !assembleShock(first.build).known.gas
      ? ' How much gas makes room for the shaft is a guess, and so is that force.'
      : '';
  return {
    kind: 'table',
    id: 'forces',
    title: 'Damping of each piston',
    note: `${speeds} Pushed in from fully out, after ${formatQuantity(travel, 'length', 'mm', 2)} at that speed.${guess}`,
    table: {
      columns: [piston, force('Rebound, slow'), force('Rebound, middle'), force('Pushed in, fast')],
      rows: cases.map((one): readonly Cell[] => [
        one.part.name,
        holdsBack(one, at.slow),
        holdsBack(one, at.middle),
        strokeForces(one.model, at.fast).afterTravel.dampingForce,
      ]),
    },
  };
}

/** Holes, and where each piston packs. */
export function packTable(cases: readonly PistonCase[], { slow }: Speeds): TableBlock {
  return {
    kind: 'table',
    id: 'packing',
    title: 'Holes, and where each piston packs',
    note: `The area of the holes at their narrowest. An empty cell means that it packs at no speed a shock can reach. The leak is the part of the oil that goes round the piston in rebound at ${shaftSpeed(slow)}.`,
    table: {
      columns: [
        piston,
        { label: 'Hole area', unit: 'mm²', dimension: 'area' },
        speed('Packs pushed in'),
        speed('Packs in rebound'),
        { label: 'Leak', unit: '%', dimension: 'ratio', digits: 2 },
      ],
      rows: cases.map(({ part, model }): readonly Cell[] => [
        part.name,
        totalHoleArea(part.piston),
        packSpeed(model) ?? null,
        packSpeed(model, 'rebound') ?? null,
        pointAt(model, -slow).leakShare,
      ]),
    },
  };
}

/** Where each piston begins to cavitate, and how fast the spring lets it out. */
export function speedTable(cases: readonly PistonCase[], temperature: number): TableBlock {
  const spring = cases.some(({ build }) => build.spring !== undefined && !build.shock.seal.measured);
  return {
    kind: 'table',
    id: 'speeds',
    title: 'Where it cavitates, and how fast the spring lets it out',
    note: `Pushed in with the shaft fully out, and let out by the spring from all the way in. An empty cell means that nothing cavitates in compression, or that the file names no spring.${spring ? ' The friction of the seals, which takes some of the speed of the spring, is a guess.' : ''}`,
    table: {
      columns: [piston, speed('Cavitates from'), force('Damping there'), speed('Spring lets it out at')],
      rows: cases.map(({ part, build, model }): readonly Cell[] => {
        const onset = cavitationOnset(model, 'compression', 0);
        return [
          part.name,
          onset?.speed ?? null,
          onset?.dampingForce ?? null,
          fastestReboundOf(build, temperature) ?? null,
        ];
      }),
    },
  };
}
