import { describe, test } from 'vitest';
import { benchStroke } from '../../lib/motion/bench/bench-stroke.js';
import { stillNusseltNumber, windNusseltNumber } from '../../lib/motion/heat/cylinder-cooling.js';
import { integrate } from '../../lib/numeric/integrator/integrate.js';
import { referenceShock } from '../motion/reference-shock.js';
import { stroke } from './bench-sine.js';
import { expectRow, list, motionRow, number } from './motion-rows.js';

describe('cooling', () => {
  test('churchill_bernstein_book and churchill_chu_book', () => {
    const wind = motionRow('churchill_bernstein_book');
    expectRow(wind, [windNusseltNumber(number(wind, 'Re'), number(wind, 'Pr'))]);
    const still = motionRow('churchill_chu_book');
    expectRow(still, [stillNusseltNumber(number(still, 'Ra'), number(still, 'Pr'))]);
  });

  const coefficient = (id: string) => {
    const row = motionRow(id);
    const [d, v, nu, k, pr] = ['D', 'V', 'nu', 'k', 'Pr'].map((name) => number(row, name)) as [
      number,
      number,
      number,
      number,
      number,
    ];
    const nusselt = windNusseltNumber((v * d) / nu, pr);
    return { row, reynolds: (v * d) / nu, nusselt, h: (nusselt * k) / d };
  };

  test('incropera_cylinder_h and shock_body_forced', () => {
    const book = coefficient('incropera_cylinder_h');
    expectRow(book.row, [book.reynolds, book.h]);
    const body = coefficient('shock_body_forced');
    expectRow(body.row, [body.reynolds, body.nusselt, body.h]);
  });

  test('newton_cooling and stroke_power', () => {
    const row = motionRow('newton_cooling');
    const temperatures = list(row, 't').map(
      (to) =>
        integrate(
          {
            size: 1,
            rates: (_time, [t], rates) => {
              rates[0] =
                (number(row, 'P') - number(row, 'hA') * ((t as number) - number(row, 'Ta'))) /
                number(row, 'C');
            },
          },
          { from: 0, to, state: [number(row, 'T0')], relative: 1e-12, absolute: [1e-10] },
        ).state[0] ?? 0,
    );
    expectRow(row, temperatures);
    const power = motionRow('stroke_power');
    const { cycles } = benchStroke(referenceShock(), stroke(10, 0.01, 2), { tolerance: 1e-9 });
    expectRow(power, [number(power, 'f') * (cycles[1]?.work ?? 0)], 1e-8);
  });
});
