import { integrate } from '../../lib/numeric/integrator/integrate.js';
import { recorder } from '../../lib/numeric/integrator/recorder.js';

export const fine = { relative: 1e-11, absolute: [1e-13, 1e-13] };
export const finest = { relative: 1e-13, absolute: [1e-15, 1e-15] };

/** Place of a mass on a spring and damper, `m x'' + c x' + k x = k y(t)`. */
export function massOnSpring(
  m: number,
  c: number,
  k: number,
  start: readonly [number, number],
  to: number,
  base: (time: number) => readonly [number, number] = () => [0, 0],
  plan = finest,
) {
  const watch = recorder(2, 1, 1, (_time, state, values) => {
    values[0] = state[0] as number;
  });
  const { state } = integrate(
    {
      size: 2,
      rates: (time, [x, v], rates) => {
        const [y, u] = base(time);
        rates[0] = v as number;
        rates[1] = -(k * ((x as number) - y) + c * ((v as number) - u)) / m;
      },
    },
    { from: 0, to, state: start, ...plan, onStep: watch.observe },
  );
  return { place: state[0] as number, ...watch.course(0) };
}
