import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { oilForce } from '../../lib/damper/oil-force.js';
import { straightBuild, straightSizes } from '../../lib/damper/straight-build.js';
import { forcesOfStraight } from '../../lib/damper/straight-forces.js';
import { straightSpeeds } from '../../lib/damper/straight-speeds.js';
import type { TolerancedBuild } from '../../lib/decisions/spread/toleranced-build.js';
import { toleranceModel } from '../../lib/decisions/spread/tolerances.js';
import { oilDensity } from '../../lib/fluid/oil/density.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { viscosityAt } from '../../lib/fluid/viscosity/viscosity-line.js';
import { damper as pocketDamper, oil as pocketOil } from '../damper/pocket-damper.js';
import { anyDamper, anySpeed } from './arbitraries.js';
import { anyPetroleum, anySilicone, between } from './fluid-arbitraries.js';

describe('forces of builds with straight holes', () => {
  /** Half widths, and places between the ends of them: 0 is the lower, 1 the upper one. */
  const halfWidths = {
    holeDiameter: 5e-5,
    thickness: 1e-4,
    bore: 5e-5,
    gap: 4e-6,
    viscosity: 0.2,
    temperature: 20,
  };
  const anyPoint = fc.array(between(1e-6, 1 - 1e-6), { minLength: 6, maxLength: 6 });

  it('are those of the full model with the sizes written in', () => {
    fc.assert(
      fc.property(
        anyDamper,
        fc.oneof(anySilicone, anyPetroleum),
        anySpeed,
        anyPoint,
        fc.constantFrom('blind-side', 'shaft-side', 'emulsion'),
        (any, oil, speed, point, layout) => {
          const gas = { ...any.gas, layout };
          const holes = any.piston.holes.slice(0, 1);
          const damper = { ...any, gas, piston: { ...any.piston, holes } };
          const tolerances = Object.fromEntries(
            Object.entries(halfWidths).map(([name, halfWidth]) => [name, { kind: 'uniform', halfWidth }]),
          ) as TolerancedBuild['tolerances'];
          const position = damper.stroke / 2;
          const build = { damper, oil, temperature: 298.15, position, speeds: [speed, -speed], tolerances };
          const forces = new Float64Array(2);
          toleranceModel(build).evaluate(Float64Array.from(point), forces);

          const off = Object.values(halfWidths).map((width, axis) => width * (2 * (point[axis] ?? 0) - 1));
          const [diameter = 0, thickness = 0, bore = 0, gap = 0, label = 0, warmer = 0] = off;
          const temperature = 298.15 + warmer;
          const deviated = {
            ...damper,
            bore: damper.bore + bore,
            piston: {
              ...damper.piston,
              diameter: damper.piston.diameter + bore - 2 * gap,
              thickness: damper.piston.thickness + thickness,
              holes: holes.map((hole) => ({ ...hole, diameter: hole.diameter + diameter })),
            },
          };
          const model = damperModel(deviated, {
            temperature,
            kinematicViscosity: viscosityAt(oil.typical, temperature) * (1 + label),
            density: oilDensity(oil.base, temperature, oil.densityAt15Celsius),
          });
          for (const [place, motion] of [speed, -speed].entries()) {
            const { dampingForce, gasForce } = damperForce(model, { speed: motion, position });
            // Both solvers end within some 1e-12 of the pressure drop.
            const size = Math.abs(dampingForce) + Math.abs(gasForce);
            expect(Math.abs((forces[place] ?? 0) - dampingForce - gasForce)).toBeLessThan(1e-10 * size);
          }
        },
      ),
    );
  });

  it('are reached at the speeds that the full model has them at', () => {
    fc.assert(
      fc.property(
        anyDamper,
        anySilicone,
        fc.array(anySpeed, { minLength: 2, maxLength: 5 }),
        (any, oil, speeds) => {
          const damper = {
            ...any,
            gas: { ...any.gas, layout: 'blind-side' as const },
            piston: { ...any.piston, holes: any.piston.holes.slice(0, 1) },
          };
          const model = damperModel(damper, fluidAt(oil, 298.15));
          const { kinematicViscosity, density } = model.fluid;
          // By the general solver, which looks for the pressure drop at a speed and not for the speed at a force.
          const forces = Float64Array.from(speeds, (speed) => Math.abs(oilForce(model, speed)));
          const found = new Float64Array(speeds.length);
          straightSpeeds(straightBuild(straightSizes(model), kinematicViscosity, density), forces, found);
          for (const [place, speed] of speeds.entries())
            expect(Math.abs((found[place] ?? 0) / Math.abs(speed) - 1)).toBeLessThan(1e-9);
        },
      ),
    );
  });

  it('are refused in the words of the full model where a size is impossible', () => {
    fc.assert(
      fc.property(anyDamper, anySilicone, (any, oil) => {
        const damper = {
          ...any,
          piston: { ...any.piston, holes: any.piston.holes.slice(0, 1) },
        };
        const build: TolerancedBuild = {
          damper,
          oil,
          temperature: 298.15,
          position: 0,
          speeds: [1],
          tolerances: { gap: { kind: 'uniform', halfWidth: 1e-3 } },
        };
        expect(() => toleranceModel(build).evaluate(Float64Array.of(0.01), new Float64Array(1))).toThrow(
          'pistonDiameter',
        );
      }),
    );
  });
});

// The force of 0.2 N is far below what inertia takes at the creeping speed; by hand v is that of the force again.
it('the speed at a force is found in oil so thin that its creeping limit is thousands of times too fast', () => {
  const sizes = straightSizes(damperModel(pocketDamper, pocketOil));
  for (const kinematicViscosity of [1.5e-8, 4e-8, 1e-7]) {
    const build = straightBuild(sizes, kinematicViscosity, 600);
    const forces = Float64Array.of(0.2, 1, 5);
    const speeds = new Float64Array(3);
    straightSpeeds(build, forces, speeds);
    const again = new Float64Array(3);
    forcesOfStraight(build, speeds, again);
    for (const [place, force] of forces.entries()) expect((again[place] ?? 0) / force).toBeCloseTo(1, 7);
  }
});
