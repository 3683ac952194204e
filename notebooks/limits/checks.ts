import { cavitationOnset } from '../../lib/damper/cavitation-onset.js';
import { type DamperModel, damperModel } from '../../lib/damper/damper-model.js';
import { sealedGas } from '../../lib/gas/gas.js';
import type { CheckBlock } from '../../lib/page/index.js';
import { formatQuantity, roundedText } from '../../lib/units/index.js';
import { newtons, shaftSpeed } from '../base/wording.js';
import { capOf, weakest, withPressure } from './limits.js';

const atmosphere = sealedGas({ volume: 1e-6, polytropicExponent: 1 });

/** What the page claims, computed on its own shock. */
export function limitChecks(model: DamperModel, wanted: number, needed: number): readonly CheckBlock[] {
  const { direction, speed, force } = weakest(model);
  const thick = damperModel(model.damper, {
    ...model.fluid,
    kinematicViscosity: 2 * model.fluid.kinematicViscosity,
  });
  const thickLimit = weakest(thick);
  const moved = cavitationOnset(withPressure(model, needed), direction, 0)?.speed ?? 0;
  return [
    {
      kind: 'check',
      claim:
        'In a bore of 12 mm with a shaft of 3 mm at 1 atm a cavity opens at 10.7 N (pressure times area)',
      passed: Math.abs(capOf(0.012, 0.003, atmosphere, 101_325) - 10.74) < 0.005,
      detail: newtons(capOf(0.012, 0.003, atmosphere, 101_325)),
    },
    {
      kind: 'check',
      claim: 'Oil twice as thick cavitates earlier, at the same pressure on the piston',
      passed: Math.abs(thickLimit.speed) < Math.abs(speed) && Math.abs(thickLimit.force - force) < 1e-9,
      detail: `${newtons(Math.abs(thickLimit.force))} from ${shaftSpeed(Math.abs(thickLimit.speed))} instead of ${newtons(Math.abs(force))} from ${shaftSpeed(Math.abs(speed))}`,
    },
    {
      kind: 'check',
      claim: `Gas at the pressure named keeps the oil whole up to ${shaftSpeed(wanted)}`,
      passed: Math.abs(Math.abs(moved) / wanted - 1) < 1e-6,
      detail: `${formatQuantity(needed, 'pressure', 'bar', 3)}; tears from ${roundedText(1000 * Math.abs(moved), 4)} mm/s`,
    },
  ];
}
