import { damperForce } from '../../lib/damper/damper-force.js';
import type { DamperModel } from '../../lib/damper/damper-model.js';
import { symmetricSpeeds } from '../../lib/damper/force-velocity.js';
import { oilForce } from '../../lib/damper/oil-force.js';
import type { Figure } from '../../lib/plot/chart/figure.js';
import { lineChart, type Rule } from '../../lib/plot/index.js';
import { formatQuantity } from '../../lib/units/index.js';
import { newtons, shaftSpeed } from '../base/wording.js';
import { capOf, weakest, withPressure } from './limits.js';

const steps = 60;
const pressureSteps = 24;
const boresShown = [0.01, 0.012, 0.014, 0.016];

/** Force against speed, as it is and as it would be if no oil tore. */
export function capFigure(model: DamperModel, fast: number): Figure {
  const { direction, speed } = weakest(model);
  const real = (v: number) => damperForce(model, { speed: v, position: 0 }).dampingForce;
  const speeds = symmetricSpeeds(fast, steps);
  const ends = direction === 'compression' ? fast : -fast;
  const torn = Math.abs(speed) < fast;
  return lineChart({
    id: 'cap',
    title: 'Where the oil tears',
    alt: torn
      ? `In ${direction} the oil tears at ${shaftSpeed(Math.abs(speed))} and ${newtons(Math.abs(real(speed)))}; at ${shaftSpeed(fast)} the force is ${newtons(Math.abs(real(ends)))}, and would be ${newtons(Math.abs(oilForce(model, ends).force))} if no oil tore.`
      : `Up to ${shaftSpeed(fast)} the oil does not tear.`,
    x: { label: 'Shaft speed, compression positive', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Damping force', unit: 'N', dimension: 'force' },
    series: [
      { name: 'this shock', points: speeds.map((v) => ({ x: v, y: real(v) })) },
      { name: 'if no oil tore', points: speeds.map((v) => ({ x: v, y: oilForce(model, v).force })) },
    ],
    points: torn ? [{ x: speed, y: real(speed), label: 'the oil tears' }] : [],
  });
}

/** Largest push back in compression against the gas pressure, for bores with this shaft. */
export function boreFigure(model: DamperModel, pressures: readonly [number, number]): Figure {
  const { gas, shaftDiameter } = model.damper;
  const points = (bore: number) =>
    along(pressures).map((pressure) => ({ x: pressure, y: capOf(bore, shaftDiameter, gas, pressure) }));
  const millimetres = (bore: number) => formatQuantity(bore, 'length', 'mm', 3);
  const at = (bore: number) => newtons(capOf(bore, shaftDiameter, gas, gas.pressure));
  return lineChart({
    id: 'bores',
    title: 'The most a shock can push back',
    alt: `With gas at ${formatQuantity(gas.pressure, 'pressure', 'bar', 3)} a bore of ${millimetres(0.012)} pushes back ${at(0.012)} at most, one of ${millimetres(0.016)} ${at(0.016)}.`,
    x: { label: 'Gas pressure, absolute', unit: 'bar', dimension: 'pressure' },
    y: { label: 'Largest force in compression', unit: 'N', dimension: 'force' },
    series: boresShown.map((bore) => ({ name: `bore ${millimetres(bore)}`, points: points(bore) })),
    rules: [here(gas.pressure)],
  });
}

/** Shaft speed at which the oil tears against the gas pressure, with the speed at which the piston packs. */
export function speedFigure(
  model: DamperModel,
  pressures: readonly [number, number],
  pack: number | undefined,
): Figure {
  const tears = (pressure: number) => Math.abs(weakest(withPressure(model, pressure)).speed);
  const { pressure } = model.damper.gas;
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
