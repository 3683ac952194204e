import type { Damper } from '../../lib/damper/damper.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import type { Block } from '../../lib/page/blocks/block.js';
import { cSt } from '../base/decision-cases.js';
import { oilAlone } from '../base/oil-forces.js';
import type { Match } from './matched.js';

/** Oils tried on each side, and how far apart. */
const tried = 60;
const widest = 1.35;

/** The exact oil again: oils from a quarter thinner to a third thicker tried one by one, force by force, without the search of the page. */
export function exactCheck(
  { wanted }: Match,
  damper: Damper,
  density: number,
  kinematicViscosity: number,
  atLimit: boolean,
): Block {
  const squares = (viscosity: number): number => {
    const model = damperModel(damper, { kinematicViscosity: viscosity, density });
    return wanted.weights.reduce((sum, { speed, weight }, place) => {
      return sum + weight * Math.log(oilAlone(model, speed) / (wanted.forces[place] ?? Number.NaN)) ** 2;
    }, 0);
  };
  const oils = Array.from(
    { length: 2 * tried + 1 },
    (_, index) => kinematicViscosity * widest ** (index / tried - 1),
  );
  const best = oils.reduce((a, b) => (squares(b) < squares(a) ? b : a));
  // The step between two oils that were tried.
  const step = widest ** (1 / tried);
  return {
    kind: 'check',
    claim: 'Of 121 oils around it, tried one by one, none comes nearer than the exact one',
    passed:
      atLimit || (best / kinematicViscosity < step * 1.0001 && kinematicViscosity / best < step * 1.0001),
    detail: `best of those tried ${cSt(best)} where the page says ${cSt(kinematicViscosity)}, at the temperature to come`,
    ifFailed: 'Take the nearest bottle of the table and try it',
  };
}
