import { damperForce } from '../../lib/damper/damper-force.js';
import type { DamperModel } from '../../lib/damper/damper-model.js';
import { gasPressure } from '../../lib/gas/gas-state.js';

/** A root of a rising function by halving, 60 times. */
function halved(rising: (x: number) => number, low: number, high: number): number {
  let [from, to] = [low, high];
  for (let turn = 0; turn < 60; turn++) {
    const middle = (from + to) / 2;
    if (rising(middle) < 0) from = middle;
    else to = middle;
  }
  return (from + to) / 2;
}

/** Brute force, from the force of whole oil and the pressure of the gas alone: the speed at which nothing is left behind the piston. */
export function bruteOnset(
  model: DamperModel,
  position: number,
  release = 0,
): { speed: number; damping: number } {
  const gas = gasPressure(model.gas, model.shaftArea * position);
  const at = (speed: number) => damperForce(model, { speed, position });
  const speed = halved((v) => at(v).pressureDrop - (gas - release), 0, 20);
  return { speed, damping: at(speed).dampingForce };
}

/** Brute force: travel in steps of a thousandth, each solved for the cavity at its end by halving; what passes the piston from the whole-oil pressure drop, by halving too. */
export function bruteDamping(model: DamperModel, speed: number, travel: number): number {
  const { dampingArea: area, shaftArea, gas, rimDrag } = model;
  const drops = Array.from({ length: 400 }, (_, i) => {
    // A cavity that drains while the shaft goes in passes more than whole oil does.
    const v = (2 * speed * (i + 1)) / 400;
    return { v, force: damperForce(model, { speed: v, position: 0 }) };
  });
  // What passes at a pressure drop, as the shaft speed of whole oil that has it: straight lines between 400 places.
  const passes = (drop: number): number => {
    const above = drops.findIndex(({ force }) => force.pressureDrop >= drop);
    if (above < 0) throw new Error('beyond the places');
    const [low, high] = [drops[above - 1], drops[above]];
    const from = { v: low?.v ?? 0, drop: low?.force.pressureDrop ?? 0 };
    return (
      from.v +
      (((high?.v ?? 0) - from.v) * (drop - from.drop)) / ((high?.force.pressureDrop ?? 1) - from.drop)
    );
  };
  const count = 1000;
  const step = travel / count;
  let cavity = 0;
  for (let i = 1; i <= count; i++) {
    const pressure = (volume: number) => gasPressure(gas, shaftArea * i * step + volume);
    const grown = (volume: number) => volume - cavity - step * area * (1 - passes(pressure(volume)) / speed);
    cavity = halved(grown, 0, Math.min(cavity + step * area, 0.9999 * gas.capacity - shaftArea * i * step));
  }
  const v = passes(gasPressure(gas, shaftArea * travel + cavity));
  const { dampingForce } = damperForce(model, { speed: v, position: 0 });
  return dampingForce + rimDrag * (speed - v);
}
