import { InputError } from '../../lib/base/input-error.js';
import { deadBand } from '../../lib/fill/air/dead-band.js';
import { typicalPetroleumBulkModulus } from '../../lib/fill/air/typical-oil.js';
import { frictionRulesBelow } from '../../lib/fill/friction/seal-measurement.js';
import { compressAiryOil } from '../../lib/fluid/air/air-in-oil.js';
import { siliconeBulkModulus } from '../../lib/fluid/oil/bulk-modulus.js';
import type { Figure, LinePoint } from '../../lib/plot/index.js';
import { lineChart } from '../../lib/plot/index.js';
import { newtons, shaftSpeed } from '../base/wording.js';
import { type BuiltShock, damperAt } from '../build-sheet/built-shock.js';

const steps = 20;
const mostAir = 0.1;

/** Bulk modulus of the oil of a build without air [Pa]. */
function bulkModulusOf({ oil }: BuiltShock, temperature: number): number {
  return oil.base === 'silicone' ? siliconeBulkModulus(temperature) : typicalPetroleumBulkModulus;
}

/** Oil at half stroke on the side of the piston away from the gas [m³]. */
function airySideVolume({ shock }: BuiltShock): number {
  const { gas, chamber } = shock;
  const { bore, capVolume, length, shaftDiameter, shaftInside, stroke } = chamber;
  const reach = shaftInside + stroke / 2;
  if (gas.layout === 'shaft-side') return (Math.PI / 4) * bore ** 2 * (length - reach) + capVolume;
  return (Math.PI / 4) * (bore ** 2 - shaftDiameter ** 2) * reach;
}

/** Dead band at half stroke [m]; `undefined` where a cavity opens before damping has built up, or neither side is held. */
export function deadBandAt(
  built: BuiltShock,
  temperature: number,
  airFraction: number,
  speed: number,
): number | undefined {
  const volume = airySideVolume(built);
  const oil = {
    liquidBulkModulus: bulkModulusOf(built, temperature),
    airFraction,
    referencePressure: built.closing.ambientPressure,
    polytropicExponent: 1,
  };
  try {
    return deadBand(damperAt(built, temperature), { volume, oil }, speed);
  } catch (error) {
    if (error instanceof InputError && ['speed', 'gas.layout'].includes(error.field)) return undefined;
    throw error;
  }
}

/** Travel before damping has built up, against the air in the oil; `undefined` where neither side of the piston is held. */
export function deadBandFigure(built: BuiltShock, temperature: number, speed: number): Figure | undefined {
  const curve = (signed: number): readonly LinePoint[] =>
    Array.from({ length: steps + 1 }, (_, step) => (mostAir * step) / steps).flatMap((x) => {
      const y = deadBandAt(built, temperature, x, signed);
      return y === undefined ? [] : [{ x, y }];
    });
  const series = [
    { name: 'pushed in', points: curve(speed) },
    { name: 'pulled out', points: curve(-speed) },
  ].filter(({ points }) => points.length > 1);
  if (series.length === 0) return undefined;
  const [pushed, pulled] = [speed, -speed].map((signed) => {
    const lost = deadBandAt(built, temperature, mostAir / 2, signed);
    return lost === undefined ? 'a cavity that opens first' : `${(1e3 * lost).toFixed(2)} mm`;
  });
  return lineChart({
    id: 'dead-band',
    title: `Travel before damping has built up, at ${shaftSpeed(speed)} from rest`,
    alt: `With 5 % of air in the oil away from the gas, damping has built up after ${pushed} pushed in and ${pulled} pulled out.`,
    x: { label: 'Air in the oil', unit: '%', dimension: 'ratio' },
    y: { label: 'Travel to 90 % of the damping', unit: 'mm', dimension: 'length' },
    series,
  });
}

/** How soft a little air makes oil, and what pressure does about it. */
export function softnessSentence(built: BuiltShock, temperature: number): string {
  const liquidBulkModulus = bulkModulusOf(built, temperature);
  const withAir = (pressure: number): string => {
    const oil = { liquidBulkModulus, airFraction: 0.01, referencePressure: 101_325, polytropicExponent: 1 };
    return (compressAiryOil(oil, pressure).bulkModulus / 1e6).toFixed(0);
  };
  return `Without air the bulk modulus of this oil is ${(liquidBulkModulus / 1e6).toFixed(0)} MPa; one percent of air at the pressure of the air outside leaves ${withAir(101_325)} MPa, and pressure brings it back: ${withAir(5e5)} MPa at 5 bar.`;
}

/** Up to which speed the friction of the seals is more than the damping. */
export function frictionSentence(built: BuiltShock, temperature: number): string {
  const model = damperAt(built, temperature);
  const { seal } = built.assembled;
  const said = (seal.measured ? [seal.typical] : [seal.low, seal.typical, seal.high]).map(
    ({ kineticForce }) => {
      const crossing = frictionRulesBelow(model, kineticForce);
      const below = crossing === undefined ? 'at every speed' : `below ${shaftSpeed(crossing)}`;
      return `${newtons(kineticForce)} is larger than damping ${below}`;
    },
  );
  return `Let out, friction of ${said.join(', of ')}${seal.measured ? '' : '; the friction is a guess'}.`;
}
