import { damperForce } from '../../lib/damper/damper-force.js';
import { gasPressure } from '../../lib/gas/gas-state.js';
import type { Build, OilPart } from '../../lib/parts/index.js';
import { modelsOf } from '../../notebooks/base/chosen-shock.js';

/** What a landing did: fastest and furthest in [m/s], [m], and the hardest push of the shock [N]. */
export interface BruteLanding {
  readonly speed: number;
  readonly travel: number;
  readonly push: number;
}

/** A car [kg], shaft for each wheel travel, and how far its spring is pressed with the shaft fully out [m]. */
export interface Car {
  readonly mass: number;
  readonly ratio: number;
  readonly preload?: number;
}

const gravity = 9.80665;
// As the page states its guesses: wheel with hub 90 g, tyre 4 N/mm and 2 N·s/m, stops 60 N/mm and 5 N·s/m, the bump stop from 88 % of the stroke.
const wheelMass = 0.09;
const tyre = { stiffness: 4000, damping: 2 };
const stop = { stiffness: 60_000, damping: 5 };
const stopShare = 0.88;

const pressing = ({ stiffness, damping }: typeof tyre, depth: number, speed: number): number =>
  depth > 0 ? Math.max(0, stiffness * depth + damping * speed) : 0;

/**
 * A landing by brute force, for gas behind the piston: Euler's steps of 4 µs, oil that does not give, a cavity that is empty space. Only the steady force of whole oil and the pressure of
 * the gas are asked, from a table; no code of the motion layer is.
 */
export function bruteLanding(
  build: Build,
  temperature: number,
  drop: number,
  { mass, ratio, preload = 0 }: Car,
  oil: OilPart = build.oil,
  followed = 0.15,
): BruteLanding {
  const { model } = modelsOf({ ...build, oil }, temperature);
  const { pistonArea, shaftArea, gas, rimDrag, damper } = model;
  const release = Math.min(damper.gas.airReleasePressure, 0.5 * gasPressure(gas, 0));
  const rate = build.spring?.rate ?? Number.NaN;
  const { stroke } = build.shock;
  const [fastest, places] = [4, 4000];
  const table = Array.from({ length: 2 * places + 1 }, (_, place) =>
    damperForce(model, { speed: ((place - places) / places) * fastest, position: 0 }),
  );
  const between = (value: 'pressureDrop' | 'dampingForce', speed: number): number => {
    const at = Math.min(2 * places - 1e-9, Math.max(0, (speed / fastest + 1) * places));
    const low = Math.floor(at);
    const [from, to] = [table[low]?.[value] ?? 0, table[low + 1]?.[value] ?? 0];
    return from + (at - low) * (to - from);
  };
  /** Speed of whole oil with a pressure drop, by halving. */
  const passes = (wanted: number): number => {
    let [low, high] = [-fastest, fastest];
    for (let turn = 0; turn < 40; turn++) {
      const middle = (low + high) / 2;
      if (between('pressureDrop', middle) < wanted) low = middle;
      else high = middle;
    }
    return (low + high) / 2;
  };
  const step = 4e-6;
  // As it falls the shaft stands where gas, spring and the stop at its end are in balance.
  const pushOut = (travel: number) =>
    shaftArea * (gasPressure(gas, shaftArea * travel) - damper.gas.ambientPressure) +
    rate * (travel + preload) -
    pressing(stop, -travel, 0);
  let [start, end] = [-1e-3, stroke];
  for (let turn = 0; turn < 60; turn++) {
    const middle = (start + end) / 2;
    if (pushOut(middle) < 0) start = middle;
    else end = middle;
  }
  const fall = -Math.sqrt(2 * gravity * drop);
  let [body, wheel, bodySpeed, wheelSpeed, cavity] = [-start / ratio, 0, fall, fall, 0];
  const most = { speed: 0, travel: 0, push: 0 };
  for (let time = 0; time < followed; time += step) {
    const travel = ratio * (wheel - body);
    const speed = ratio * (wheelSpeed - bodySpeed);
    const pressure = gasPressure(gas, shaftArea * travel + cavity);
    const opens = cavity > 0 || pressure - between('pressureDrop', speed) < release;
    const through = opens ? passes(pressure - release) : speed;
    cavity = opens ? Math.max(0, cavity + step * (pistonArea - shaftArea) * (speed - through)) : 0;
    const seal = damper.seal.kineticForce * Math.tanh(speed / 1e-3);
    const push =
      between('dampingForce', through) +
      rimDrag * (speed - through) +
      shaftArea * (pressure - damper.gas.ambientPressure) +
      seal;
    const strut =
      push +
      rate * (travel + preload) +
      pressing(stop, travel - stopShare * stroke, speed) -
      pressing(stop, -travel, -speed);
    bodySpeed += step * ((ratio * strut) / mass - gravity);
    wheelSpeed += step * ((pressing(tyre, -wheel, -wheelSpeed) - ratio * strut) / wheelMass - gravity);
    body += step * bodySpeed;
    wheel += step * wheelSpeed;
    most.speed = Math.max(most.speed, speed);
    most.travel = Math.max(most.travel, travel);
    most.push = Math.max(most.push, push);
  }
  return most;
}
