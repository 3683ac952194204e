import { damperForce } from '../../lib/damper/damper-force.js';
import type { DamperModel } from '../../lib/damper/damper-model.js';
import { symmetricSpeeds } from '../../lib/damper/force-velocity.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import { lineChart, type Rule } from '../../lib/plot/index.js';
import { formatQuantity } from '../../lib/units/index.js';
import { newtons, shaftSpeed } from '../base/wording.js';
import { capOf, weakest, withPressure } from './limits.js';

const steps = 60;
const pressureSteps = 24;
const boresShown = [0.01, 0.012, 0.014, 0.016];

/** Force of whole oil against speed, with the onset of cavitation. */
export function capFigure(model: DamperModel, fast: number): Figure {
  const { direction, speed } = weakest(model);
  const real = (v: number) => damperForce(model, { speed: v, position: 0 }).dampingForce;
  const speeds = symmetricSpeeds(fast, steps);
  const torn = Math.abs(speed) < fast;
  return lineChart({
    id: 'cap',
    title: 'Where cavitation begins',
    alt: torn
      ? `In ${direction} a cavity opens at ${shaftSpeed(Math.abs(speed))} and ${newtons(Math.abs(real(speed)))}.`
      : `Up to ${shaftSpeed(fast)} no cavity opens.`,
    x: { label: 'Shaft speed, compression positive', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Damping force', unit: 'N', dimension: 'force' },
    series: [{ name: 'oil held whole', points: speeds.map((v) => ({ x: v, y: real(v) })) }],
    points: torn ? [{ x: speed, y: real(speed), label: 'cavitation begins' }] : [],
  });
}

/** Push back at the onset of cavitation in compression against the gas pressure, for bores with this shaft. */
export function boreFigure(model: DamperModel, pressures: readonly [number, number]): Figure {
  const { gas, shaftDiameter } = model.damper;
  const points = (bore: number) =>
    along(pressures).map((pressure) => ({ x: pressure, y: capOf(bore, shaftDiameter, gas, pressure) }));
  const millimetres = (bore: number) => formatQuantity(bore, 'length', 'mm', 3);
  const at = (bore: number) => newtons(capOf(bore, shaftDiameter, gas, gas.closing.pressure));
  return lineChart({
    id: 'bores',
    title: 'Push back where cavitation begins',
    alt: `With gas at ${formatQuantity(gas.closing.pressure, 'pressure', 'bar', 3)} a bore of ${millimetres(0.012)} begins to cavitate at ${at(0.012)}, one of ${millimetres(0.016)} ${at(0.016)}.`,
    x: { label: 'Gas pressure, absolute', unit: 'bar', dimension: 'pressure' },
    y: { label: 'Force at the onset in compression', unit: 'N', dimension: 'force' },
    series: boresShown.map((bore) => ({ name: `bore ${millimetres(bore)}`, points: points(bore) })),
    rules: [here(gas.closing.pressure)],
  });
}

/** Shaft speed at which the oil tears against the gas pressure, with the speed at which the piston packs. */
export function speedFigure(
  model: DamperModel,
  pressures: readonly [number, number],
  pack: number | undefined,
): Figure {
  const tears = (pressure: number) => Math.abs(weakest(withPressure(model, pressure)).speed);
  const { pressure } = model.damper.gas.closing;
  const [low, high] = [tears(pressure), tears(2 * pressure)];
  return lineChart({
    id: 'speeds',
    title: 'How fast before it tears',
    alt: `At the gas pressure of the shock the oil tears from ${shaftSpeed(low)}; twice the pressure moves that to ${shaftSpeed(high)}.`,
    x: { label: 'Gas pressure, absolute', unit: 'bar', dimension: 'pressure' },
    y: { label: 'Shaft speed at which the oil tears', unit: 'mm/s', dimension: 'speed' },
    series: [{ name: 'oil tears', points: along(pressures).map((x) => ({ x, y: tears(x) })) }],
    rules: [
      here(pressure),
      ...(pack === undefined || pack > 2 * tears(pressures[1])
        ? []
        : [{ axis: 'y' as const, value: pack, label: 'the piston packs' }]),
    ],
  });
}

function here(pressure: number): Rule {
  return { axis: 'x', value: pressure, label: 'this shock' };
}

function along([low, high]: readonly [number, number]): readonly number[] {
  return Array.from({ length: pressureSteps + 1 }, (_, step) => low + ((high - low) * step) / pressureSteps);
}
