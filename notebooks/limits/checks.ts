import { cavitationLimit } from '../../lib/damper/cavitation-limit.js';
import { damperForce } from '../../lib/damper/damper-force.js';
import { type DamperModel, damperModel } from '../../lib/damper/damper-model.js';
import type { CheckBlock } from '../../lib/page/index.js';
import { formatQuantity, roundedText } from '../../lib/units/index.js';
import { newtons, shaftSpeed } from '../base/wording.js';
import { capOf, weakest, withPressure } from './limits.js';

const atmosphere = { volume: 1e-6, pressure: 101_325, polytropicExponent: 1, ambientPressure: 101_325 };

/** What the page claims, computed on its own shock. */
export function limitChecks(model: DamperModel, wanted: number, needed: number): readonly CheckBlock[] {
  const { direction, speed, force } = weakest(model);
  const thick = damperModel(model.damper, {
    ...model.fluid,
    kinematicViscosity: 2 * model.fluid.kinematicViscosity,
  });
  const thickLimit = weakest(thick);
  const flat = [1.5, 3].map((factor) => damperForce(model, { speed: factor * speed, position: 0 }));
  const moved = cavitationLimit(withPressure(model, needed), direction, 0)?.speed ?? 0;
  const [one, other] = flat.map(({ pressureDrop }) => pressureDrop);
  return [
    {
      kind: 'check',
      claim: 'A bore of 12 mm with a shaft of 3 mm at 1 atm pushes back 10.7 N at most (pressure times area)',
      passed: Math.abs(capOf(0.012, 0.003, atmosphere, 101_325) - 10.74) < 0.005,
      detail: newtons(capOf(0.012, 0.003, atmosphere, 101_325)),
    },
    {
      kind: 'check',
      claim: 'Oil twice as thick tears earlier, and the pressure on the piston makes no more of it',
      passed: Math.abs(thickLimit.speed) < Math.abs(speed) && Math.abs(thickLimit.force - force) < 1e-9,
      detail: `${newtons(Math.abs(thickLimit.force))} from ${shaftSpeed(Math.abs(thickLimit.speed))} instead of ${newtons(Math.abs(force))} from ${shaftSpeed(Math.abs(speed))}`,
    },
    {
      kind: 'check',
      claim: 'Once the oil tears, more speed adds no pressure',
      passed: flat.every(({ cavitating }) => cavitating) && one === other,
      detail: `${formatQuantity(Math.abs(one ?? 0), 'pressure', 'bar', 3)} at 1.5 and at 3 times that speed`,
    },
    {
      kind: 'check',
      claim: `Gas at the pressure named keeps the oil whole up to ${shaftSpeed(wanted)}`,
      passed: Math.abs(Math.abs(moved) / wanted - 1) < 1e-6,
      detail: `${formatQuantity(needed, 'pressure', 'bar', 3)}; tears from ${roundedText(1000 * Math.abs(moved), 4)} mm/s`,
    },
  ];
}
