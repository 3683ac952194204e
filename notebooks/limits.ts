import { gasPressureAgainstCavitation } from '../lib/damper/cavitation-onset.js';
import { packSpeed } from '../lib/damper/pack-speed.js';
import { type Block, defineNotebook, onePart, quantity, type TableBlock } from '../lib/page/index.js';
import { formatQuantity } from '../lib/units/index.js';
import { forceAssumptions, forceSources, oilSources, workCautions } from './base/basis.js';
import { modelAt, oilCase } from './base/oil-forces.js';
import { oilTemperature, speed } from './base/quantities.js';
import { celsius, newtons, shaftSpeed } from './base/wording.js';
import { limitChecks } from './limits/checks.js';
import { boreFigure, capFigure, speedFigure } from './limits/figures.js';
import { capOf, weakest, withPressure } from './limits/limits.js';

export const notebook = defineNotebook({
  name: 'limits',
  order: 40,
  title: 'Where cavitation begins',
  question: 'How hard does my shock push back where cavitation begins, and what would move that?',
  parameters: {
    pressure: quantity({
      dimension: 'pressure',
      unit: 'bar',
      default: 1.01,
      min: 0.8,
      max: 4,
      step: 0.01,
      label: 'Gas pressure',
      help: 'Absolute pressure of the gas with the shaft fully out; 1.01 bar is a shock closed without pressure.',
    }),
    wanted: quantity({
      ...speed,
      label: 'Whole up to',
      help: 'Shaft speed up to which the oil shall not tear.',
      default: 500,
    }),
    oil: onePart({ list: 'oils', label: 'Oil', help: 'The oil in the shock.' }),
    temperature: oilTemperature,
    piston: onePart({ list: 'pistons', label: 'Piston', help: 'The piston in the shock.' }),
    shock: onePart({ list: 'shocks', label: 'Shock', help: 'The body that the piston runs in.' }),
    fast: quantity({ ...speed, label: 'Fastest', help: 'The end of the speed axis.', default: 1000 }),
  },
  run(_parts, values) {
    const { pressure, wanted, oil, temperature, piston, shock, fast } = values;
    const model = withPressure(modelAt(oilCase(oil, shock, piston), temperature), pressure);
    const limit = weakest(model);
    const sign = limit.direction === 'compression' ? 1 : -1;
    const needed = gasPressureAgainstCavitation(model, sign * wanted);
    const pack = packSpeed(model);
    const pressures = [0.8e5, Math.max(2.5e5, 1.3 * pressure)] as const;
    const bar = (value: number) => formatQuantity(value, 'pressure', 'bar', 3);
    const blocks: readonly Block[] = [
      { kind: 'figure', figure: capFigure(model, fast) },
      {
        kind: 'text',
        text: 'Oil pushes well and pulls hardly at all. As the piston moves, the oil behind it has nothing but the gas to press it after. When the pressure there falls to where air comes out of the oil, a cavity opens, and on the way back the piston must close the cavity before the shock damps again.',
      },
      {
        kind: 'text',
        text: `Keeping the oil whole up to ${shaftSpeed(wanted)} would take gas at ${bar(needed)} absolute; this page has ${bar(pressure)}.`,
      },
      { kind: 'figure', figure: speedFigure(model, pressures, pack) },
      { kind: 'figure', figure: boreFigure(model, pressures) },
      capTable(model, pressure),
      ...limitChecks(model, wanted, needed),
      {
        kind: 'caution',
        text: 'More gas pressure is worth a thought only where the maker allows it. Never fill a shock with gas that was not made for it, and let pressure out before you open one.',
      },
      ...workCautions.map((text): Block => ({ kind: 'caution', text })),
      {
        kind: 'assumptions',
        items: [
          `Piston ${piston.name} in shock ${shock.name} with ${oil.name} at ${celsius(temperature)}, shaft fully out, where the gas is weakest.`,
          `The oil tears at ${bar(model.damper.gas.airReleasePressure)} absolute; oil that has stood in air is likely to tear somewhat earlier, up to 0.2 bar (common practice, no source).`,
          'The curve is that of whole oil; what the cavity does to the rest of the stroke is not on this page.',
          ...forceAssumptions,
        ],
      },
    ];
    return {
      answer: `With gas at ${bar(pressure)} cavitation begins at ${shaftSpeed(Math.abs(limit.speed))} in ${limit.direction} on ${oil.name}, where the pressure on the piston makes ${newtons(Math.abs(limit.force))}.`,
      blocks,
      sources: [...forceSources, ...oilSources],
    };
  },
});

function capTable(model: ReturnType<typeof modelAt>, pressure: number): TableBlock {
  const shafts = [0.0025, 0.003, 0.0035, 0.004];
  return {
    kind: 'table',
    id: 'caps',
    title: `Push back where cavitation begins in compression, gas at ${formatQuantity(pressure, 'pressure', 'bar', 3)} on the blind side`,
    note: 'Pressure times area, without drag on the rim, recoil of the jets and friction of the seals.',
    table: {
      columns: [
        { label: 'Bore', unit: 'mm', dimension: 'length' },
        ...shafts.map((shaft) => ({
          label: `Shaft ${formatQuantity(shaft, 'length', 'mm', 2)}`,
          unit: 'N',
          dimension: 'force' as const,
        })),
      ],
      rows: [0.01, 0.012, 0.014, 0.016].map((bore) => [
        bore,
        ...shafts.map((shaft) => capOf(bore, shaft, model.damper.gas, pressure)),
      ]),
    },
  };
}
