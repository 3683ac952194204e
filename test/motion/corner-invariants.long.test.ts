import { describe, expect, test } from 'vitest';
import { contactAt } from '../../lib/motion/corner/contact.js';
import { cornerEquation } from '../../lib/motion/corner/corner-equation.js';
import { cornerEvents } from '../../lib/motion/corner/corner-events.js';
import { groundOf } from '../../lib/motion/corner/ground.js';
import { moveCorner } from '../../lib/motion/corner/move-corner.js';
import { bindChambers } from '../../lib/motion/shock/chambers.js';
import { integrate } from '../../lib/numeric/integrator/integrate.js';
import { linearShock } from './linear-shock.js';
import { sampleCorner } from './sample-corner.js';
import { sampleShock } from './sample-shock.js';

describe('a corner', () => {
  const undamped = {
    ...sampleCorner,
    tyre: { stiffness: 4000, damping: 0 },
    bumpStop: { from: 0.021, stiffness: 60_000, damping: 0 },
    droopStop: { stiffness: 60_000, damping: 0 },
  };

  test('without damping its energy stays, over landing, stops and lift-off', () => {
    const shock = linearShock();
    const chambers = bindChambers(shock);
    const ground = groundOf({ kind: 'landing', dropHeight: 0.1 });
    const start = Float64Array.of(0, 0, -1.4, 0, -1.4);
    const modes = {
      oil: { isOpen: false, cavities: [] },
      tyre: contactAt(undamped.tyre, 0, 1.4),
      bump: contactAt(undamped.bumpStop, -0.021, 0),
      droop: contactAt(undamped.droopStop, 0, 0),
    };
    const bound = { shock, chambers, corner: undamped, ground, modes };
    const history = { tyreUnloads: [], liftOffs: [], touchDowns: [], bottomings: [], slaps: [] };
    const energy = (state: Float64Array): number => {
      const [, body, bodySpeed, wheel, wheelSpeed] = state as unknown as [
        number,
        number,
        number,
        number,
        number,
      ];
      const travel = 0.72 * (wheel - body);
      const stops = 30_000 * (Math.max(0, travel - 0.021) ** 2 + Math.max(0, -travel) ** 2);
      const springs = 300 * (travel + 0.003) ** 2 + 2000 * Math.max(0, -wheel) ** 2 + stops;
      return (
        0.17 * bodySpeed ** 2 + 0.045 * wheelSpeed ** 2 + 9.80665 * (0.34 * body + 0.09 * wheel) + springs
      );
    };
    const { equation } = cornerEquation(bound);
    const { state } = integrate(equation, {
      from: 0,
      to: 1,
      state: start,
      relative: 1e-10,
      absolute: [1e-20, 1e-12, 1e-10, 1e-12, 1e-10],
      firstStep: 1e-7,
      events: cornerEvents(bound, history),
    });
    expect(history.liftOffs.length).toBeGreaterThan(1);
    expect(Math.abs(energy(state) / energy(start) - 1)).toBeLessThan(1e-6);
  });

  test('all of the drop is lost in the end, most of it in the shock', () => {
    const r = moveCorner(sampleShock(), sampleCorner, { kind: 'landing', dropHeight: 0.15 }, { duration: 2 });
    const { holes, recoil, rim, seals } = r.lost;
    expect(holes + recoil + rim + seals).toBeGreaterThan(0.5 * 0.43 * 9.80665 * 0.15);
    expect(holes + recoil + rim + seals).toBeLessThan(1.1 * 0.43 * 9.80665 * 0.15 + 0.05);
    expect(r.settlingTime).toBeGreaterThan(0.1);
    expect(r.meanTyreForce).toBeCloseTo(0.43 * 9.80665, 0);
  });

  test('a higher drop lands harder, bottoms sooner and slaps a low chassis', () => {
    const low = moveCorner(sampleShock(), sampleCorner, { kind: 'landing', dropHeight: 0.15 });
    const corner = { ...sampleCorner, clearance: 0.03 };
    const high = moveCorner(sampleShock(), corner, { kind: 'landing', dropHeight: 0.4 });
    expect(low.bottomings).toEqual([]);
    expect(high.bottomings[0]?.speed).toBeGreaterThan(0);
    expect(high.largestBumpStopForce.value).toBeGreaterThan(0);
    expect(high.slaps[0]?.speed).toBeGreaterThan(0.5);
    expect(high.largestShockForce.value).toBeGreaterThan(low.largestShockForce.value);
    expect(high.airTime).toBeGreaterThan(low.airTime);
  });

  test('the tyre ceases to push before the wheel leaves the ground', () => {
    const r = moveCorner(sampleShock(), sampleCorner, { kind: 'washboard', height: 0.006, frequency: 12 });
    expect(r.liftOffs.length).toBeGreaterThan(10);
    r.liftOffs.forEach((time, i) => {
      expect(time - (r.tyreUnloads[i] as number)).toBeGreaterThan(1e-4);
      expect(time - (r.tyreUnloads[i] as number)).toBeLessThan(2e-3);
    });
  });

  test('a bump is not jumped over, however long the wait before it', () => {
    const times = [0, 0.5, 0.505, 0.51, 1];
    const r = moveCorner(sampleShock(), sampleCorner, { kind: 'table', times, heights: [0, 0, 0.01, 0, 0] });
    expect(r.largestTyreForce.value).toBeGreaterThan(15);
    expect(r.largestTyreForce.time).toBeGreaterThan(0.5);
  });

  test('friction that sticks holds the shaft where the smooth law creeps', () => {
    const bristles = {
      kineticForce: 0.6,
      breakawayForce: 0.9,
      stribeckSpeed: 0.01,
      stiffness: 2e4,
      damping: 0.5,
      viscous: 0,
    };
    const seal = { kineticForce: 0.6, breakawayForce: 0.9 };
    const landing = { kind: 'landing', dropHeight: 0.1 } as const;
    const drift = (r: ReturnType<typeof moveCorner>) =>
      Math.abs((r.trace.travels.at(-1) as number) - (r.trace.travels.at(-101) as number));
    const sticks = moveCorner(sampleShock({ seal }), sampleCorner, landing, { duration: 2, bristles });
    const creeps = moveCorner(sampleShock({ seal }), sampleCorner, landing, { duration: 2 });
    expect(drift(sticks)).toBeLessThan(0.2 * drift(creeps));
  });
});
