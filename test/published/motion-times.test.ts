import { describe, expect, test } from 'vitest';
import { benchStroke } from '../../lib/motion/bench/bench-stroke.js';
import {
  closingSpike,
  holeInertance,
  swingingTube,
  tubeSettlingTime,
} from '../../lib/motion/shock/left-out.js';
import type { MovingShock } from '../../lib/motion/shock/moving-shock.js';
import { oilExpansion, oilExpansionSlope } from '../../lib/motion/shock/oil-volume.js';
import { linearShock } from '../motion/linear-shock.js';
import { referenceShock } from '../motion/reference-shock.js';
import { stroke } from './bench-sine.js';
import { expectRow, list, motionRow, number } from './motion-rows.js';

describe('times and sizes', () => {
  test('chamber_time_pure and chamber_time_air', () => {
    const stiffness = (oil: MovingShock['oil']) =>
      -oilExpansion(oil, oil.referencePressure) / oilExpansionSlope(oil, oil.referencePressure);
    const pure = motionRow('chamber_time_pure');
    const oil = { ...linearShock().oil, bulkModulus: number(pure, 'K') };
    expectRow(pure, [number(pure, 'V') / (stiffness(oil) * number(pure, 'conductance'))]);
    const airy = motionRow('chamber_time_air');
    const air = { ...oil, referencePressure: number(airy, 'p0'), airFraction: number(airy, 'airFraction') };
    const [volume, conductance] = [number(airy, 'V'), number(airy, 'conductance')];
    const area = number(motionRow('hole_inertance'), 'A');
    const modulus = stiffness(air);
    expectRow(airy, [modulus, volume / (modulus * conductance), (area ** 2 * modulus) / volume]);
  });

  test('settling_time_hole and womersley_10Hz', () => {
    const settling = motionRow('settling_time_hole');
    expectRow(settling, [tubeSettlingTime(number(settling, 'r'), number(settling, 'nu'))]);
    const womersley = motionRow('womersley_10Hz');
    const { ratio, lead } = swingingTube(
      number(womersley, 'f'),
      number(womersley, 'r'),
      number(womersley, 'nu'),
    );
    expectRow(womersley, [ratio, (lead * 180) / Math.PI]);
  });

  test('hole_inertance, hole_inertia_share_10Hz, bump_5ms_inertia', () => {
    const row = motionRow('hole_inertance');
    const inertance = holeInertance(
      number(row, 'rho'),
      number(row, 'L'),
      number(row, 'r'),
      number(row, 'count'),
    );
    expectRow(row, [inertance, inertance * number(row, 'A') ** 2, inertance * number(row, 'conductance')]);
    // The shock has the inertance of slow changes, 4/3 L + 1.03 d in place of L + 16 r/(3π): 5.0843 mm over 3.9429 mm, by hand.
    expect(referenceShock().inertance / inertance).toBeCloseTo(1.2895, 4);
    const share = motionRow('hole_inertia_share_10Hz');
    const passage = { flow: 0, recoil: 0 };
    referenceShock().passage(1e-3, passage);
    // The conductance is that of our own sample shock.
    expectRow(
      share,
      list(share, 'f').map((f) => (2 * Math.PI * f * inertance * passage.flow) / 1e-3),
    );
    const bump = motionRow('bump_5ms_inertia');
    const acceleration = (Math.PI * number(bump, 'v')) / number(bump, 'T');
    expectRow(bump, [inertance * number(bump, 'A') * acceleration]);
  });

  test('lost_stroke: cavity over the area of the piston less the shaft', () => {
    const row = motionRow('lost_stroke');
    const { lostStroke, largestCavity } = benchStroke(referenceShock(), stroke(10, 0.01));
    expectRow(row, [(lostStroke / largestCavity.value) * number(row, 'cavity')]);
  });

  test('cavity_gas_pressure', () => {
    const row = motionRow('cavity_gas_pressure');
    expectRow(row, [referenceShock().gas.pressure(number(row, 'shaftVolume') + number(row, 'cavity'))]);
  });

  test('collapse_spike', () => {
    const row = motionRow('collapse_spike');
    const [inertance, volume, modulus, change] = ['inertance', 'volume', 'bulkModulus', 'flowChange'].map(
      (name) => number(row, name),
    ) as [number, number, number, number];
    expectRow(row, [closingSpike(inertance, volume, modulus, change)]);
  });
});
