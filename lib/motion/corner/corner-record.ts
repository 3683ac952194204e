import { standardGravity } from '../../base/constants.js';
import { oilEnthalpy } from '../shock/oil-volume.js';
import { type BoundCorner, type CornerEquation, emptyCornerForces, unknown } from './corner-equation.js';

/** Places of the quantities that a run of a corner records. */
export const cornerRecorded = {
  shockForce: 0,
  springForce: 1,
  bumpForce: 2,
  tyreForce: 3,
  travel: 4,
  shaftSpeed: 5,
  body: 6,
  bodyAcceleration: 7,
  cavity: 8,
  blindPressure: 9,
  shaftPressure: 10,
  drop: 11,
  shaftAcceleration: 12,
  /** Those before are watched for peaks. */
  peaks: 13,
  tyreForceSquare: 13,
  shockPower: 14,
  holePower: 15,
  recoilPower: 16,
  rimPower: 17,
  sealPower: 18,
  count: 19,
} as const;

/** Writes what {@link cornerRecorded} names. */
export function cornerWriter(
  { shock, chambers, corner, modes }: BoundCorner,
  { evaluate }: CornerEquation,
): (time: number, state: Float64Array, values: Float64Array) => void {
  const now = emptyCornerForces();
  const { sense } = chambers;
  const { sprungMass, wheelMass, motionRatio } = corner;
  return (time, state, values) => {
    evaluate(time, state, now);
    const { near, far } = now.chambers;
    const strut = motionRatio * (now.shock + now.spring + now.bump - now.droop);
    const body = strut / sprungMass - standardGravity;
    const wheel = (now.tyre - strut) / wheelMass - standardGravity;
    const lost = oilEnthalpy(shock.oil, near) - oilEnthalpy(shock.oil, far);
    values[cornerRecorded.shockForce] = now.shock;
    values[cornerRecorded.springForce] = now.spring;
    values[cornerRecorded.bumpForce] = now.bump;
    values[cornerRecorded.tyreForce] = now.tyre;
    values[cornerRecorded.tyreForceSquare] = now.tyre * now.tyre;
    values[cornerRecorded.travel] = now.travel;
    values[cornerRecorded.shaftSpeed] = now.speed;
    values[cornerRecorded.body] = state[unknown.body] as number;
    values[cornerRecorded.bodyAcceleration] = body;
    values[cornerRecorded.cavity] = modes.oil.isOpen
      ? Math.max(0, chambers.cavity(now.travel, state[unknown.room] as number))
      : 0;
    values[cornerRecorded.blindPressure] = sense === 1 ? near : far;
    values[cornerRecorded.shaftPressure] = sense === 1 ? far : near;
    values[cornerRecorded.drop] = now.drop;
    values[cornerRecorded.shaftAcceleration] = motionRatio * (wheel - body);
    values[cornerRecorded.shockPower] = now.shock * now.speed;
    values[cornerRecorded.holePower] = now.passage.flow * sense * lost;
    values[cornerRecorded.recoilPower] = -now.passage.recoil * now.speed;
    values[cornerRecorded.rimPower] = now.rim * now.speed;
    values[cornerRecorded.sealPower] = now.seal * now.speed;
  };
}
