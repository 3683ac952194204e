import { createOil } from '../fluid/oil/oil.js';
import type { OilDefinition, ViscosityDefinition } from '../fluid/oil/oil-definition.js';
import { coefficientTemperatures } from '../fluid/viscosity/barry-silicone.js';
import { viscosityAt } from '../fluid/viscosity/viscosity-line.js';
import { givenSeal } from './assembly/seal-interval.js';
import type { Build, MeasuredValues } from './parts.js';

/** Temperature of the viscosity of a silicone [K]. */
const reference = 298.15;
/** Temperatures through which the line of another oil is moved [K]: a cold morning, and oil that worked hard. */
const others = [268.15, 328.15] as const;

/** The viscosity of an oil that has another value at 25 °C and changes with temperature as its label says. */
function movedViscosity(definition: OilDefinition, viscosity: number): ViscosityDefinition {
  const { typical: line } = createOil(definition);
  const factor = viscosity / viscosityAt(line, reference);
  if (line.kind === 'silicone') {
    const { cold, hot } = coefficientTemperatures;
    return {
      kind: 'viscosity-temperature-coefficient',
      point: { temperature: reference, kinematicViscosity: viscosity },
      coefficient: 1 - viscosityAt(line, hot) / viscosityAt(line, cold),
    };
  }
  const points = others.map((temperature) => ({
    temperature,
    kinematicViscosity: factor * viscosityAt(line, temperature),
  }));
  return { kind: 'points', points };
}

/**
 * A build as it was measured: the oil that its readings tell, its holes as much larger or smaller, the friction of its seals. Parts that differ from those of the
 * file get a name of their own; all else is as stated. Every page that takes the build takes this one.
 *
 * @param build - as stated
 * @param measured - viscosity at 25 °C [m²/s], diameter of the first holes over that stated, friction [N]
 */
export function asMeasured(build: Build, measured: MeasuredValues): Build {
  const named = (name: string): string => `${name}, as measured in ${build.name}`;
  const { oil, piston, shock } = build;
  const { piston: stated } = piston;
  const larger = (stated.holes[0]?.diameter ?? 0) * (measured.holes - 1);
  const holes = stated.holes.map((group) => ({ ...group, diameter: group.diameter + larger }));
  const { kineticForce, breakawayForce } = shock.seal.typical;
  const breakaway = kineticForce > 0 ? (measured.friction * breakawayForce) / kineticForce : undefined;
  const viscosity = movedViscosity(oil.definition, measured.viscosity);
  // What stands in the shock is no bottle that could be bought.
  const { bottle: _, ...label } = oil;
  const filled = { ...label, name: named(oil.name), definition: { ...oil.definition, viscosity } };
  const { wanted } = build;
  return {
    ...build,
    oil: filled,
    ...(wanted?.oil === oil ? { wanted: { ...wanted, oil: filled } } : {}),
    piston: { name: named(piston.name), piston: { ...stated, holes } },
    shock: { ...shock, name: named(shock.name), seal: givenSeal(measured.friction, breakaway) },
    measured,
  };
}
