import { InputError } from '../../lib/base/input-error.js';
import { damperForce } from '../../lib/damper/damper-force.js';
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

const airFractions = [0.001, 0.01, 0.05] as const;

/** How soft a little air makes oil. */
export function softnessFigure(built: BuiltShock, temperature: number): Figure {
  const liquidBulkModulus = bulkModulusOf(built, temperature);
  const at = (airFraction: number, pressure: number): number =>
    compressAiryOil(
      { liquidBulkModulus, airFraction, referencePressure: 101_325, polytropicExponent: 1 },
      pressure,
    ).bulkModulus;
  const atOneBar = (at(0.01, 101_325) / 1e6).toFixed(0);
  return lineChart({
    id: 'soft-oil',
    title: 'Stiffness of oil with air in it',
    alt: `Without air this oil has ${(liquidBulkModulus / 1e6).toFixed(0)} MPa; one percent of air at the pressure of the air outside leaves ${atOneBar} MPa, and pressure brings it back.`,
    x: { label: 'Absolute pressure', unit: 'bar', dimension: 'pressure' },
    y: { label: 'Bulk modulus', unit: 'MPa', dimension: 'pressure' },
    series: airFractions.map((airFraction) => ({
      name: `${100 * airFraction} % air at 1 atm`,
      points: Array.from({ length: steps + 1 }, (_, step) => {
        const pressure = 0.5e5 + (4.5e5 * step) / steps;
        return { x: pressure, y: at(airFraction, pressure) };
      }),
    })),
  });
}

/** Damping at walking pace against the friction of the seals. */
export function frictionFigure(built: BuiltShock, temperature: number): Figure {
  const model = damperAt(built, temperature);
  const { seal } = built.assembled;
  const forces = (seal.measured ? [seal.typical] : [seal.low, seal.typical, seal.high]).map(
    ({ kineticForce }) => kineticForce,
  );
  const crossings = forces.map((force) => frictionRulesBelow(model, force));
  const fastest = Math.max(1.5 * Math.max(...crossings.map((speed) => speed ?? 0)), 0.01);
  const said = forces.map((force, index) => {
    const crossing = crossings[index];
    const below = crossing === undefined ? 'at every speed' : `below ${shaftSpeed(crossing)}`;
    return `${newtons(force)} is larger than damping ${below}`;
  });
  return lineChart({
    id: 'friction-or-damping',
    title: 'Damping of a slow shaft against seal friction',
    alt: `Let out, friction of ${said.join(', of ')}${seal.measured ? '' : '; the friction is a guess'}.`,
    x: { label: 'Shaft speed', unit: 'mm/s', dimension: 'speed' },
    y: { label: 'Force against the motion', unit: 'N', dimension: 'force' },
    series: [
      {
        name: 'damping of the oil',
        points: Array.from({ length: steps + 1 }, (_, step) => {
          const speed = (fastest * step) / steps;
          return { x: speed, y: Math.abs(damperForce(model, { speed: -speed, position: 0 }).dampingForce) };
        }),
      },
    ],
    rules: forces.map((value) => ({
      axis: 'y',
      value,
      label: seal.measured ? 'seal friction' : `seals of ${newtons(value)}, a guess`,
    })),
  });
}
