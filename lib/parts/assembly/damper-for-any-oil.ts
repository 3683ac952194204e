import { madeWith, optional, requireShape } from '../../base/shape.js';
import type { Damper } from '../../damper/damper.js';
import type { Build } from '../parts.js';
import { assembleShock } from './assembled-shock.js';

/**
 * The damper of a build whose oil is still to be chosen: the growth of its own oil is left out, since another oil of another density would be
 * taken for one that has grown. For comparing and choosing oils; {@link assembleShock} is for everything that asks the gas.
 *
 * @param build - shock, piston, oil and closing position of the parts file, in SI
 * @throws InputError as {@link assembleShock} does
 * @public
 */
export function damperForAnyOil(build: Pick<Build, 'shock' | 'piston' | 'oil' | 'closeAt'>): Damper {
  requireShape(
    { build },
    {
      build: {
        shock: madeWith('seal'),
        piston: madeWith('piston'),
        oil: madeWith('definition'),
        closeAt: optional('m'),
      },
    },
  );
  const { damper } = assembleShock(build);
  const { oilDensity: _, ...closing } = damper.gas.closing;
  return { ...damper, gas: { ...damper.gas, closing } };
}
