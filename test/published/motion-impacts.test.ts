import { describe, test } from 'vitest';
import { type Cushion, contactAt, contactEvents, contactForce } from '../../lib/motion/corner/contact.js';
import { landingSpeed } from '../../lib/motion/corner/move-corner.js';
import { integrate } from '../../lib/numeric/integrator/integrate.js';
import { recorder } from '../../lib/numeric/integrator/recorder.js';
import { fine } from './mass-on-spring.js';
import { expectRow, motionRow, number } from './motion-rows.js';

describe('impacts', () => {
  /** A mass that falls onto a cushion with a speed; `turns` times until it rebounds. */
  function impact(
    mass: number,
    gravity: number,
    height: number,
    speed: number,
    cushion: Cushion,
    leaves: number,
  ) {
    const contact = contactAt(cushion, -height, speed);
    const left: number[] = [];
    const touched: number[] = [];
    const watch = recorder(2, 2, 2, (_time, [depth, rate], values) => {
      values[0] = depth as number;
      values[1] = contactForce(contact, depth as number, rate as number);
    });
    const { state } = integrate(
      {
        size: 2,
        rates: (_time, [depth, rate], rates) => {
          rates[0] = rate as number;
          rates[1] = gravity - contactForce(contact, depth as number, rate as number) / mass;
        },
      },
      {
        from: 0,
        to: 60,
        state: [-height, speed],
        ...fine,
        onStep: watch.observe,
        events: [
          ...contactEvents(
            contact,
            (_time, [depth, rate]) => ({ depth: depth as number, speed: rate as number }),
            {
              touches: (time) => touched.push(time),
              leaves: (time) => left.push(time),
            },
          ),
          {
            value: (_time, [, rate]) => rate as number,
            direction: () => (left.length === leaves ? 1 : 0),
            happens: () => 'stop',
          },
        ],
      },
    );
    return { depth: watch.course(0).largest, force: watch.course(1).largest, left, touched, state };
  }

  test('drop_on_spring and bounce_energy', () => {
    const row = motionRow('drop_on_spring');
    const [m, g, h, k] = ['m', 'g', 'h', 'k'].map((name) => number(row, name)) as [
      number,
      number,
      number,
      number,
    ];
    const { depth, force, state } = impact(m, g, h, 0, { stiffness: k, damping: 0 }, 10);
    expectRow(row, [depth, force]);
    // Stopped at the top of the tenth bounce.
    const energy = (m * (state[1] ?? 0) ** 2) / 2 - m * g * (state[0] ?? 0);
    expectRow(motionRow('bounce_energy'), [energy / (m * g * h)]);
  });

  test('bump_stop_peak', () => {
    const row = motionRow('bump_stop_peak');
    const stop = { stiffness: number(row, 'k'), damping: 0 };
    // Held by nothing else: the least pull that brings it back later.
    const { force, left } = impact(number(row, 'm'), 1e-9, 0, number(row, 'v'), stop, 1);
    expectRow(row, [force, left[0] ?? 0]);
  });

  test('landing_speed', () => {
    const row = motionRow('landing_speed');
    expectRow(row, [landingSpeed(number(row, 'h'))]);
  });
});
