import { buildFault } from './build-fit.js';
import type { Build, OilPart, PistonPart } from './parts.js';
import type { ShockPart } from './shock-part.js';

/** The most builds that are made: a file with more parts than this says which belong together. */
const mostMade = 24;

/** Parts of a file without builds. */
interface Loose {
  readonly oils: readonly OilPart[];
  readonly pistons: readonly PistonPart[];
  readonly shocks: readonly ShockPart[];
}

/** The name of a build that is made. */
export function madeName({ shock, piston }: Pick<Build, 'shock' | 'piston'>): string {
  return `${shock.name}, ${piston.name}`;
}

/** Builds of a file that names none: every piston that fits, in every shock, with the first oil. */
export function madeBuilds({ oils, pistons, shocks }: Loose): {
  readonly builds: readonly Build[];
  readonly assumptions: readonly string[];
} {
  const [oil] = oils;
  if (oil === undefined || pistons.length === 0 || shocks.length === 0)
    return { builds: [], assumptions: [] };
  const builds: Build[] = [];
  for (const shock of shocks) {
    for (const piston of pistons) {
      if (builds.length === mostMade || buildFault({ shock, piston, oil }) !== undefined) continue;
      builds.push({ name: madeName({ shock, piston }), shock, piston, oil, quantity: 1 });
    }
  }
  if (builds.length === 0)
    return {
      builds,
      assumptions: ['The parts file has no builds, and none of its pistons fits one of its shocks.'],
    };
  return {
    builds,
    assumptions: [
      `The parts file has no builds: ${builds.length === 1 ? 'one is' : `${builds.length} are`} made of the pistons that fit, each with the first oil, ${oil.name}.`,
    ],
  };
}
