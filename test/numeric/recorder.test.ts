import { expect, test } from 'vitest';
import { integrate } from '../../lib/numeric/integrator/integrate.js';
import { recorder } from '../../lib/numeric/integrator/recorder.js';
import { oscillator } from './oscillator.js';

// A sine by its own equation, over one period, lifted above 0 and put below it: peaks at π/2 and 3π/2, which lie on no step.
test('peaks are found between the steps, of values above 0 and below', () => {
  const watch = recorder(2, 3, 2, (_time, [place = 0], values) => {
    values[0] = 2 + place;
    values[1] = place - 2;
    values[2] = place * place;
  });
  integrate(oscillator, {
    from: 0,
    to: 2 * Math.PI,
    state: [0, 1],
    relative: 1e-9,
    absolute: [1e-9, 1e-9],
    onStep: watch.observe,
  });
  const [above, below, square] = [watch.course(0), watch.course(1), watch.course(2)];
  for (const [course, largest, smallest] of [
    [above, 3, 1],
    [below, -1, -3],
  ] as const) {
    expect(course.largest).toBeCloseTo(largest, 7);
    expect(course.smallest).toBeCloseTo(smallest, 7);
    expect(course.largestTime).toBeCloseTo(Math.PI / 2, 3);
    expect(course.smallestTime).toBeCloseTo((3 * Math.PI) / 2, 3);
  }
  expect(above.integral).toBeCloseTo(4 * Math.PI, 7);
  expect(square.integral).toBeCloseTo(Math.PI, 7);
});
