import { creepingDampingCoefficient } from '../lib/damper/force-point.js';
import { packSpeed } from '../lib/damper/pack-speed.js';
import { totalHoleArea } from '../lib/flow/piston/piston.js';
import {
  type Block,
  defineNotebook,
  onePart,
  quantity,
  severalParts,
  type TableBlock,
} from '../lib/page/index.js';
import type { Cell } from '../lib/plot/chart/table.js';
import { forceAssumptions, forceSources, oilSources, workCautions } from './base/basis.js';
import { doubts } from './base/doubts.js';
import { modelAt, oilCase, pointAt } from './base/oil-forces.js';
import { runsIn } from './base/piston-in-bore.js';
import { oilTemperature, speed } from './base/quantities.js';
import { requireSlowBelowFast } from './base/slow-below-fast.js';
import { celsius, shaftSpeed } from './base/wording.js';
import { forceVelocityFigure, type PistonCase, packFigure } from './compare-pistons/figures.js';

export const notebook = defineNotebook({
  name: 'compare-pistons',
  order: 63,
  title: 'What each piston does to your damping',
  question: 'With one oil, how do my pistons differ, and where does each of them pack?',
  parameters: {
    oil: onePart({ list: 'oils', label: 'Oil', help: 'The oil in the shock.' }),
    temperature: oilTemperature,
    shock: onePart({
      list: 'shocks',
      label: 'Shock',
      help: 'The body; only pistons that fit its bore are shown.',
    }),
    pistons: severalParts({ list: 'pistons', atMost: 8, label: 'Pistons', help: 'The pistons to compare.' }),
    slow: quantity({ ...speed, label: 'Slow', help: 'A slow shaft speed: roll and pitch.', default: 50 }),
    fast: quantity({
      ...speed,
      label: 'Fast',
      help: 'A fast shaft speed: landings; the end of the axis.',
      default: 1000,
    }),
  },
  run(_parts, values) {
    const { oil, temperature, shock, slow, fast } = values;
    requireSlowBelowFast(values);
    const fitting = values.pistons.filter(({ piston }) => runsIn(piston.diameter, shock.bore));
    const left = values.pistons.filter((part) => !fitting.includes(part));
    const cases: readonly PistonCase[] = fitting.map((part) => ({
      part,
      model: modelAt(oilCase(oil, shock, part), temperature),
    }));
    const blocks: readonly Block[] = [
      ...left.map(
        ({ name }): Block => ({
          kind: 'text',
          text: `${name} is left out: it does not run in the bore of ${shock.name}.`,
        }),
      ),
      ...evidence(cases, slow, fast),
      {
        kind: 'text',
        text: 'A piston packs where inertia in the holes costs as much pressure as the thickness of the oil. Below that speed the oil sets the damping, above it the hole area does, and damping rises with the square of speed.',
      },
      { kind: 'heading', text: 'Where to be careful' },
      ...doubts(
        cases.flatMap(({ part, model }) =>
          [fast, -fast].flatMap((end) =>
            pointAt(model, end).warnings.map((warning) => ({ of: part.name, warning })),
          ),
        ),
      ),
      ...checks(cases, fast),
      ...workCautions.map((text): Block => ({ kind: 'caution', text })),
      {
        kind: 'assumptions',
        items: [
          `Oil ${oil.name} at ${celsius(temperature)} in shock ${shock.name}, half way down the stroke.`,
          'The speed at which a piston packs is our own measure of the trade’s word: inertial part of the pressure drop equal to the viscous part.',
          ...forceAssumptions,
        ],
      },
    ];
    return { answer: answer(cases, slow, fast), blocks, sources: [...forceSources, ...oilSources] };
  },
});

/** Pictures and numbers, where there is a piston to show. */
function evidence(cases: readonly PistonCase[], slow: number, fast: number): readonly Block[] {
  if (cases.length === 0) return [];
  return [
    { kind: 'figure', figure: forceVelocityFigure(cases, fast) },
    { kind: 'figure', figure: packFigure(cases, fast) },
    pistonTable(cases, slow, fast),
  ];
}

function answer(cases: readonly PistonCase[], slow: number, fast: number): string {
  const ranked = cases
    .map(({ part, model }) => ({
      name: part.name,
      growth: pointAt(model, -fast).dampingCoefficient / pointAt(model, -slow).dampingCoefficient,
    }))
    .sort((one, other) => one.growth - other.growth);
  const [straightest, steepest] = [ranked[0], ranked.at(-1)];
  if (straightest === undefined || steepest === undefined)
    return 'No piston of the parts file runs in this shock.';
  const times = (growth: number) => `${growth.toFixed(1)} times`;
  const range = `From ${shaftSpeed(slow)} to ${shaftSpeed(fast)} the damping per speed rises`;
  return cases.length === 1
    ? `${range} to ${times(steepest.growth)} with ${steepest.name}.`
    : `${range} to ${times(steepest.growth)} with ${steepest.name}, which packs most, and to ${times(straightest.growth)} with ${straightest.name}, which packs least.`;
}

function pistonTable(cases: readonly PistonCase[], slow: number, fast: number): TableBlock {
  return {
    kind: 'table',
    id: 'pistons',
    title: 'The pistons in numbers',
    note: 'An empty pack speed lies beyond every speed that a shock can reach.',
    table: {
      columns: [
        { label: 'Piston', unit: '' },
        { label: 'Hole area', unit: 'mm²', dimension: 'area' },
        { label: 'Damping at rest', unit: 'N·s/m' },
        { label: `Rebound force at ${shaftSpeed(slow)}`, unit: 'N', dimension: 'force' },
        { label: `Rebound force at ${shaftSpeed(fast)}`, unit: 'N', dimension: 'force' },
        { label: 'Packs at', unit: 'mm/s', dimension: 'speed' },
        { label: 'Hole Reynolds number', unit: '' },
        { label: 'Leak past the rim', unit: '%', dimension: 'ratio', digits: 2 },
      ],
      rows: cases.map(({ part, model }): readonly Cell[] => {
        const [atSlow, atFast] = [pointAt(model, -slow), pointAt(model, -fast)];
        return [
          part.name,
          totalHoleArea(part.piston),
          creepingDampingCoefficient(model),
          -atSlow.dampingForce,
          -atFast.dampingForce,
          packSpeed(model) ?? null,
          atFast.holeReynoldsNumber,
          atSlow.leakShare,
        ];
      }),
    },
  };
}

function checks(cases: readonly PistonCase[], fast: number): readonly Block[] {
  const rising = cases.filter(
    ({ model }) => pointAt(model, -fast).dampingCoefficient > pointAt(model, -fast / 2).dampingCoefficient,
  );
  const doubled = cases.filter(({ model }) => {
    const speed = packSpeed(model);
    if (speed === undefined) return true;
    const drop = (v: number) => pointAt(model, -v).pressureDrop / v;
    return Math.abs(drop(speed) / drop(1e-6) - 2) < 1e-3;
  });
  return [
    {
      kind: 'check',
      claim: 'Damping per speed never falls as the shaft gets faster',
      passed: rising.length === cases.length,
      detail: `${rising.length} of ${cases.length} pistons, rebound up to ${shaftSpeed(fast)}`,
    },
    {
      kind: 'check',
      claim: 'At its pack speed each piston needs twice the pressure that slow oil would',
      passed: doubled.length === cases.length,
      detail: `${doubled.length} of ${cases.length} pistons`,
    },
  ];
}
