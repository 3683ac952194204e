import { describe, expect, test } from 'vitest';
import type { Piece } from '../../lib/motion/bench/stroke.js';
import { strokeEquation } from '../../lib/motion/bench/stroke-equation.js';
import { bindChambers, emptyPressures } from '../../lib/motion/shock/chambers.js';
import { integrate } from '../../lib/numeric/integrator/integrate.js';
import { referenceShock } from '../motion/reference-shock.js';
import { expectRow, motionRow, number } from './motion-rows.js';

describe('a shaft held still', () => {
  const held = (travel: number): Piece => ({
    from: 0,
    to: 1,
    knots: [],
    evaluate: (_time, place) => {
      place.travel = travel;
      place.speed = 0;
      place.acceleration = 0;
    },
  });

  // The row lets the room fall from 0.4 ml to 0, which leaves out that oil without pressure is 1.1e-4 larger: the cavity itself closes
  // 6e-4 earlier.
  test('refill_time', () => {
    const row = motionRow('refill_time');
    const shock = referenceShock();
    const oil = { isOpen: true, cavities: [] };
    const { equation } = strokeEquation(shock, bindChambers(shock), held(number(row, 'x')), oil);
    const { time, stopped } = integrate(equation, {
      from: 0,
      to: 0.02,
      state: [number(row, 'cavity')],
      relative: 1e-9,
      absolute: [1e-18],
      firstStep: 1e-7,
      events: [
        { value: (_time, [room]) => room as number, direction: () => -1, happens: () => 'stop' as const },
      ],
    });
    expect(stopped).toBe(true);
    expectRow(row, [time]);
  });

  test('chamber_relaxation', () => {
    const row = motionRow('chamber_relaxation');
    const shock = referenceShock({ airFraction: 0.01 });
    const chambers = bindChambers(shock);
    const pressures = emptyPressures();
    const travel = number(row, 'x');
    const excess = (room: number): number => {
      chambers.evaluate(travel, room, false, pressures);
      return pressures.far - pressures.near;
    };
    // Room at which the far chamber has the pressure above the other: a secant is enough for so small a pressure.
    let [a, b] = [0, 1e-12];
    for (let i = 0; i < 40 && Math.abs(excess(b) - number(row, 'overpressure')) > 1e-9; i++) {
      const next = b + ((number(row, 'overpressure') - excess(b)) * (b - a)) / (excess(b) - excess(a));
      [a, b] = [b, next];
    }
    const oil = { isOpen: false, cavities: [] };
    const { equation, events } = strokeEquation(shock, chambers, held(travel), oil);
    const time = number(motionRow('chamber_relaxation'), 'x') / 24;
    const { state } = integrate(equation, {
      from: 0,
      to: time,
      state: [b],
      relative: 1e-12,
      absolute: [1e-22],
      firstStep: 1e-7,
      events,
    });
    expectRow(row, [-time / Math.log(excess(state[0] ?? 0) / number(row, 'overpressure'))]);
  });
});
