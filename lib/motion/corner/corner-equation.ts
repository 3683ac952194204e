import { standardGravity } from '../../base/constants.js';
import type { DifferentialEquation } from '../../numeric/integrator/differential-equation.js';
import { type BristleFriction, forceOfBristles, rateOfBristles } from '../shock/bristle-friction.js';
import { type ChamberPressures, type Chambers, emptyPressures } from '../shock/chambers.js';
import type { MovingShock, Passage } from '../shock/moving-shock.js';
import type { OilCavity } from '../shock/oil-cavity.js';
import { pressureForce, writePassageSlopes } from '../shock/shock-force.js';
import { type Contact, contactForce, cushionSlope } from './contact.js';
import type { Corner } from './corner.js';
import type { Ground } from './ground.js';

/** Places of the unknowns: room of the far chamber [m³], heights [m] and speeds [m/s] of body and wheel, bend of the bristles [m]. */
export const unknown = { room: 0, body: 1, bodySpeed: 2, wheel: 3, wheelSpeed: 4, bend: 5 } as const;

/** The modes of a corner: each changes at events only. */
export interface CornerModes {
  readonly oil: OilCavity;
  readonly tyre: Contact;
  readonly bump: Contact;
  readonly droop: Contact;
}

/** All that acts in a corner at one instant, written anew by each evaluation. */
export interface CornerForces {
  travel: number;
  speed: number;
  readonly chambers: ChamberPressures;
  readonly passage: Passage;
  /** Pressure drop over the piston, blind side to shaft side [Pa]. */
  drop: number;
  rim: number;
  seal: number;
  /** Force of the shock [N]: oil, gas, rim and seals. */
  shock: number;
  spring: number;
  bump: number;
  droop: number;
  tyre: number;
}

/** What a corner is made of, bound. */
export interface BoundCorner {
  readonly shock: MovingShock;
  readonly chambers: Chambers;
  readonly corner: Corner;
  readonly ground: Ground;
  readonly modes: CornerModes;
  /** Friction that sticks, in place of the smooth law of the seals. */
  readonly bristles?: BristleFriction;
}

export interface CornerEquation {
  readonly equation: DifferentialEquation;
  readonly evaluate: (time: number, state: Float64Array, forces: CornerForces) => void;
}

export function emptyCornerForces(): CornerForces {
  return {
    travel: 0,
    speed: 0,
    chambers: emptyPressures(),
    passage: { flow: 0, recoil: 0 },
    drop: 0,
    rim: 0,
    seal: 0,
    shock: 0,
    spring: 0,
    bump: 0,
    droop: 0,
    tyre: 0,
  };
}

/** Equations of a corner: one state for oil and gas, height and speed for each of two masses. */
export function cornerEquation(bound: BoundCorner): CornerEquation {
  const { shock, chambers, corner, ground, modes, bristles } = bound;
  const { sprungMass, wheelMass, motionRatio, springRate, springPreload } = corner;
  const { sense, farArea } = chambers;
  const size = bristles === undefined ? 5 : 6;
  const now = emptyCornerForces();
  const slopes: Passage = { flow: 0, recoil: 0 };

  const sealAt = (state: Float64Array, speed: number): number =>
    bristles === undefined
      ? shock.sealForce(speed)
      : forceOfBristles(bristles, state[unknown.bend] as number, speed);

  function writePlace(state: Float64Array, forces: CornerForces): void {
    forces.travel = motionRatio * ((state[unknown.wheel] as number) - (state[unknown.body] as number));
    forces.speed =
      motionRatio * ((state[unknown.wheelSpeed] as number) - (state[unknown.bodySpeed] as number));
  }

  function writeForces(time: number, state: Float64Array, forces: CornerForces): void {
    const { travel, speed } = forces;
    forces.drop = sense * (forces.chambers.near - forces.chambers.far);
    shock.passage(forces.drop, forces.passage);
    forces.rim = shock.rimDrag(speed);
    forces.seal = sealAt(state, speed);
    forces.shock =
      pressureForce(shock, sense, forces.chambers, forces.passage.recoil) + forces.rim + forces.seal;
    forces.spring = springRate * (travel + springPreload);
    forces.bump = contactForce(modes.bump, travel - corner.bumpStop.from, speed);
    forces.droop = contactForce(modes.droop, -travel, -speed);
    forces.tyre = 0;
    if (modes.tyre.pushing) {
      ground.evaluate(time);
      const depth = ground.height - (state[unknown.wheel] as number);
      forces.tyre = contactForce(modes.tyre, depth, ground.slope - (state[unknown.wheelSpeed] as number));
    }
  }

  function evaluate(time: number, state: Float64Array, into: CornerForces): void {
    writePlace(state, into);
    chambers.evaluate(into.travel, state[unknown.room] as number, modes.oil.isOpen, into.chambers);
    writeForces(time, state, into);
  }

  function rates(time: number, state: Float64Array, out: Float64Array): void {
    evaluate(time, state, now);
    writeRates(state, out);
  }

  function writeRates(state: Float64Array, out: Float64Array): void {
    const strut = now.shock + now.spring + now.bump - now.droop;
    out[unknown.room] = farArea * now.speed - sense * now.passage.flow;
    out[unknown.body] = state[unknown.bodySpeed] as number;
    out[unknown.bodySpeed] = (motionRatio * strut) / sprungMass - standardGravity;
    out[unknown.wheel] = state[unknown.wheelSpeed] as number;
    out[unknown.wheelSpeed] = (now.tyre - motionRatio * strut) / wheelMass - standardGravity;
    if (bristles !== undefined) {
      out[unknown.bend] = rateOfBristles(bristles, state[unknown.bend] as number, now.speed);
    }
  }

  /** Slope of rim drag and seal friction over the speed. */
  function frictionSlope(state: Float64Array, speed: number): number {
    const step = 1e-4 * Math.max(Math.abs(speed), 1e-3);
    const above = shock.rimDrag(speed + step) + sealAt(state, speed + step);
    return (above - shock.rimDrag(speed - step) - sealAt(state, speed - step)) / (2 * step);
  }

  function writeSlopes(time: number, state: Float64Array, j: Float64Array, overTime: Float64Array): void {
    writePlace(state, now);
    const { travel, speed, chambers: both } = now;
    chambers.evaluateWithSlopes(travel, state[unknown.room] as number, modes.oil.isOpen, both);
    const dropByRoom = sense * (both.nearByRoom - both.farByRoom);
    const dropByTravel = sense * (both.nearByTravel - both.farByTravel);
    writePassageSlopes(shock, sense * (both.near - both.far), slopes);
    const shaftByRoom = sense === 1 ? both.farByRoom : both.nearByRoom;
    const shaftByTravel = sense === 1 ? both.farByTravel : both.nearByTravel;
    const byDrop = shock.pistonArea - slopes.recoil;
    const strutByRoom = byDrop * dropByRoom + shock.shaftArea * shaftByRoom;
    const bump = modes.bump.pushing ? cushionSlope(corner.bumpStop, travel - corner.bumpStop.from) : 0;
    const droop = modes.droop.pushing ? cushionSlope(corner.droopStop, -travel) : 0;
    const stopDamping =
      (modes.bump.pushing ? corner.bumpStop.damping : 0) +
      (modes.droop.pushing ? corner.droopStop.damping : 0);
    const strutByTravel = byDrop * dropByTravel + shock.shaftArea * shaftByTravel + springRate + bump + droop;
    const strutBySpeed = frictionSlope(state, speed) + stopDamping;
    const row = (index: number) => index * size;

    j.fill(0);
    overTime.fill(0);
    const flowByTravel = -sense * slopes.flow * dropByTravel * motionRatio;
    j[row(unknown.room) + unknown.room] = -sense * slopes.flow * dropByRoom;
    j[row(unknown.room) + unknown.body] = -flowByTravel;
    j[row(unknown.room) + unknown.wheel] = flowByTravel;
    j[row(unknown.room) + unknown.bodySpeed] = -farArea * motionRatio;
    j[row(unknown.room) + unknown.wheelSpeed] = farArea * motionRatio;
    j[row(unknown.body) + unknown.bodySpeed] = 1;
    j[row(unknown.wheel) + unknown.wheelSpeed] = 1;
    for (const [speedRow, mass, sign] of masses) {
      const share = (sign * motionRatio) / mass;
      j[row(speedRow) + unknown.room] = share * strutByRoom;
      j[row(speedRow) + unknown.body] = -share * strutByTravel * motionRatio;
      j[row(speedRow) + unknown.wheel] = share * strutByTravel * motionRatio;
      j[row(speedRow) + unknown.bodySpeed] = -share * strutBySpeed * motionRatio;
      j[row(speedRow) + unknown.wheelSpeed] = share * strutBySpeed * motionRatio;
    }
    writeTyreSlopes(time, state, j, overTime);
    if (bristles !== undefined) writeBristleSlopes(bristles, state, j);
  }

  const masses = [
    [unknown.bodySpeed, sprungMass, 1],
    [unknown.wheelSpeed, wheelMass, -1],
  ] as const;

  function writeTyreSlopes(time: number, state: Float64Array, j: Float64Array, overTime: Float64Array): void {
    if (!modes.tyre.pushing) return;
    ground.evaluate(time);
    const rate = cushionSlope(corner.tyre, ground.height - (state[unknown.wheel] as number)) / wheelMass;
    const damping = corner.tyre.damping / wheelMass;
    const onWheel = unknown.wheelSpeed * size + unknown.wheel;
    const onWheelSpeed = unknown.wheelSpeed * size + unknown.wheelSpeed;
    j[onWheel] = (j[onWheel] as number) - rate;
    j[onWheelSpeed] = (j[onWheelSpeed] as number) - damping;
    overTime[unknown.wheelSpeed] = rate * ground.slope + damping * ground.bend;
  }

  function writeBristleSlopes(friction: BristleFriction, state: Float64Array, j: Float64Array): void {
    const { speed } = now;
    const bend = state[unknown.bend] as number;
    const step = 1e-4 * Math.max(Math.abs(speed), friction.stribeckSpeed * 1e-2);
    const bySpeed =
      (rateOfBristles(friction, bend, speed + step) - rateOfBristles(friction, bend, speed - step)) /
      (2 * step);
    // The rate is linear in the bend.
    const byBend = rateOfBristles(friction, 1, speed) - rateOfBristles(friction, 0, speed);
    j[unknown.bend * size + unknown.bend] = byBend;
    j[unknown.bend * size + unknown.bodySpeed] = -bySpeed * motionRatio;
    j[unknown.bend * size + unknown.wheelSpeed] = bySpeed * motionRatio;
    const sealByBend = friction.stiffness + friction.damping * byBend;
    j[unknown.bodySpeed * size + unknown.bend] = (motionRatio * sealByBend) / sprungMass;
    j[unknown.wheelSpeed * size + unknown.bend] = (-motionRatio * sealByBend) / wheelMass;
  }

  return { equation: { size, rates, slopes: writeSlopes }, evaluate };
}
