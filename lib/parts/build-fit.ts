import { InputError } from '../base/input-error.js';
import { bindDamper } from '../damper/damper-model.js';
import { fluidAt } from '../fluid/oil/fluid-at.js';
import { createOil } from '../fluid/oil/oil.js';
import { formatQuantity } from '../units/index.js';
import { assembleShock } from './assembly/assembled-shock.js';
import { type BuildFault, type FoundBuild, faultWords } from './assembly/fault-words.js';
import { ShockFault } from './assembly/shock-fault.js';
import type { PistonPart } from './parts.js';
import { holesFault } from './schema/piston-schema.js';
import type { ShockPart } from './shock-part.js';
import { literal } from './source/literal.js';

/** A piston this much smaller than the bore was taken for another shock: the gap would carry most of the oil. */
const loosest = 0.9;

/** Says why the parts of a build do not go together, or nothing. The core decides; only what no law needs is checked here. */
export function buildFault(build: FoundBuild): BuildFault | undefined {
  const message = fitFault(build.shock, build.piston);
  if (message !== undefined) return { of: 'piston', path: [], message };
  try {
    const { damper, closed } = assembleShock(build);
    bindDamper(damper, fluidAt(createOil(build.oil.definition), closed.closing.temperature));
    return undefined;
  } catch (error) {
    if (error instanceof InputError) return faultWords(error, build);
    throw error;
  }
}

/** Says why a shock cannot be closed with any piston, or nothing. */
export function shockFault(shock: ShockPart): BuildFault | undefined {
  try {
    assembleShock({ shock, piston: usualPiston(shock), oil: { name: '', definition: usualOil } });
    return undefined;
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    const fault = faultWords(error, {
      shock,
      piston: usualPiston(shock),
      oil: { name: '', definition: usualOil },
    });
    // What a piston of unknown size takes of the room is no fault of the file.
    const doubtful = error instanceof ShockFault && shock.inside?.solidVolume === undefined;
    return doubtful || fault.of === 'piston' ? undefined : fault;
  }
}

/** A piston and an oil that stand in where the file has none for a shock. */
function usualPiston({ bore }: ShockPart): PistonPart {
  return { name: '', piston: { diameter: 0.995 * bore, thickness: 0.2 * bore, holes: [], eccentricity: 0 } };
}

const usualOil: FoundBuild['oil']['definition'] = {
  base: 'silicone',
  viscosity: { kind: 'silicone', point: { temperature: 298.15, kinematicViscosity: 350e-6 } },
};

/** Says why a piston belongs to another shock, or why its holes meet the shaft, or nothing. */
function fitFault(shock: ShockPart, part: PistonPart): string | undefined {
  const { diameter, holes } = part.piston;
  const millimetres = (value: number): string => formatQuantity(value, 'length', 'mm', 5);
  if (diameter < loosest * shock.bore)
    return `the piston ${literal(part.name)} of ${millimetres(diameter)} must be at least ${millimetres(loosest * shock.bore)} for the bore of ${millimetres(shock.bore)} of ${literal(shock.name)}`;
  if (shock.shaftDiameter >= diameter || diameter >= shock.bore) return undefined;
  const fault = holesFault(holes, diameter, shock.shaftDiameter);
  return fault === undefined ? undefined : `the holes of ${literal(part.name)} ${fault}`;
}
