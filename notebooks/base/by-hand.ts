import type { DamperModel } from '../../lib/damper/damper-model.js';
import { oilForce } from '../../lib/damper/oil-force.js';
import type { CheckBlock } from '../../lib/page/index.js';
import { roundedText } from '../../lib/units/index.js';

/** So slow that inertia costs nothing [m/s]. */
const creep = 1e-5;
const allowed = 0.03;

/**
 * Slow damping per speed by the formulas of textbooks [N·s/m], for straight sharp holes; `undefined` for other pistons. For each hole
 * `Δp = (μ V / d)(32 L/d + 6π)`, Poiseuille along it and Sampson at its ends; past the rim `Q = π D h³ Δp (1 + 1.5 ε²) / (12 μ L)`; on the rim `μ π D L v / h`.
 */
export function slowDampingByHand({ damper, fluid, dampingArea }: DamperModel): number | undefined {
  const { piston, bore } = damper;
  const straight = piston.holes.every(
    ({ shape }) =>
      shape === undefined ||
      (shape.kind === 'straight' && shape.blindEdge === undefined && shape.shaftEdge === undefined),
  );
  if (!straight || (piston.valves ?? []).length > 0 || piston.holes.length === 0) return undefined;
  const viscosity = fluid.kinematicViscosity * fluid.density;
  const [gap, diameter, length] = [
    (bore - piston.diameter) / 2,
    (bore + piston.diameter) / 2,
    piston.thickness,
  ];
  const eccentric = 1 + 1.5 * piston.eccentricity ** 2;
  let conductance = (Math.PI * diameter * gap ** 3 * eccentric) / (12 * viscosity * length);
  for (const { count, diameter: d } of piston.holes)
    conductance += (count * Math.PI * d ** 3) / 4 / (viscosity * ((32 * length) / d + 6 * Math.PI));
  const rim = (viscosity * Math.PI * diameter * length) / gap / Math.sqrt(1 - piston.eccentricity ** 2);
  return dampingArea ** 2 / conductance + rim;
}

/** Compares the slow damping of a page with that by hand, for those that have straight sharp holes; nothing where none has. */
export function handChecks(
  cases: readonly { readonly name: string; readonly model: DamperModel }[],
): readonly CheckBlock[] {
  const compared = cases.flatMap(({ name, model }) => {
    const byHand = slowDampingByHand(model);
    return byHand === undefined ? [] : [{ name, byHand, page: oilForce(model, creep) / creep }];
  });
  if (compared.length === 0) return [];
  const far = compared.filter(({ byHand, page }) => Math.abs(page / byHand - 1) > allowed);
  const [shown] = far.length > 0 ? far : compared;
  if (shown === undefined) return [];
  const numbers = `${shown.name}: ${roundedText(shown.byHand, 3)} N·s/m by hand, ${roundedText(shown.page, 3)} N·s/m on the page`;
  return [
    {
      kind: 'check',
      claim:
        'Slow damping is that of the textbook formulas for a tube, its ends and the gap (Poiseuille, Sampson)',
      passed: far.length === 0,
      detail: `${compared.length - far.length} of ${compared.length} within ${100 * allowed} %; ${numbers}`,
      ifFailed:
        'Measure this piston and its bore again: a gap or a hole far from usual is beyond the formulas',
    },
  ];
}
