import type { HoleGroup } from '../../lib/flow/geometry/piston.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { buildFault } from '../../lib/parts/build-fit.js';
import type { Build, OilPart, Parts } from '../../lib/parts/parts.js';
import { holesFault } from '../../lib/parts/schema/piston-schema.js';
import { formatQuantity } from '../../lib/units/index.js';
import { knownOil, knownShock } from '../base/known.js';
import { runsIn } from '../base/piston-in-bore.js';

/** A change at the bench, as a build. */
export interface Change {
  readonly name: string;
  readonly build: Build;
}

/** What the drill takes off [m], and how much a limiter is long [m]. */
const drilled = 1e-4;
const limiter = 1e-3;

const limiterName = `limiter of ${formatQuantity(limiter, 'length', 'mm')} on the shaft inside`;

/** Places nearer than this are one [m]. */
const sameLength = 1e-4;

/** Two oils nearer than this are one bottle. */
const sameOil = 0.01;

/** All changes of this build that its parts file and a drill allow, and what is not among them. */
export function changesOf(
  parts: Parts,
  build: Build,
  temperature: number,
): { readonly changes: readonly Change[]; readonly missing: readonly string[] } {
  const [thicker, thinner] = nextOils(parts, build, temperature);
  const all = [
    ...(thicker === undefined
      ? []
      : [{ name: `one bottle thicker: ${thicker.name}`, build: { ...build, oil: thicker } }]),
    ...(thinner === undefined
      ? []
      : [{ name: `one bottle thinner: ${thinner.name}`, build: { ...build, oil: thinner } }]),
    ...drilledPistons(build),
    ...otherPistons(parts, build),
    ...otherSprings(parts, build),
    ...limited(build),
    ...habits(build),
  ];
  const fits = (change: Change): boolean => buildFault(change.build) === undefined;
  return {
    changes: all.filter(fits),
    missing: [
      ...(thicker === undefined ? ['no oil of the file or its shop is thicker'] : []),
      ...(thinner === undefined ? ['no oil of the file or its shop is thinner'] : []),
      ...(knownShock(build).known.gas
        ? []
        : [`${limiterName}, since the gas of ${build.shock.name} is a guess`]),
      ...all.filter((change) => !fits(change)).map(({ name }) => `${name} does not go with the rest`),
    ],
  };
}

/** The next thicker and the next thinner oil of the file and its shop, as warm as stated. */
function nextOils(
  { oils, shop = [] }: Parts,
  { oil }: Build,
  temperature: number,
): readonly [OilPart | undefined, OilPart | undefined] {
  const viscosity = ({ definition }: OilPart): number =>
    fluidAt(knownOil(definition), temperature).kinematicViscosity;
  const own = viscosity(oil);
  const sorted = [...oils, ...shop]
    .map((one) => ({ one, ratio: viscosity(one) / own }))
    .sort((a, b) => a.ratio - b.ratio);
  return [
    sorted.find(({ ratio }) => ratio > 1 + sameOil)?.one,
    sorted.findLast(({ ratio }) => ratio < 1 - sameOil)?.one,
  ];
}

/** A hole of another size; a taper or a step keeps its shape. */
function wider(group: HoleGroup, by: number): HoleGroup {
  const diameter = group.diameter + by;
  const { shape } = group;
  if (shape === undefined || !('shaftSideDiameter' in shape)) return { ...group, diameter };
  return { ...group, diameter, shape: { ...shape, shaftSideDiameter: shape.shaftSideDiameter + by } };
}

function drilledPistons(build: Build): readonly Change[] {
  const { piston: part, shock } = build;
  const { holes, diameter } = part.piston;
  const [first] = holes;
  if (first === undefined) return [];
  const more = [{ ...first, count: first.count + 1 }, ...holes.slice(1)];
  const larger = holes.map((group) => wider(group, drilled));
  const as = (changed: readonly HoleGroup[], name: string): readonly Change[] =>
    holesFault(changed, diameter, shock.shaftDiameter) === undefined
      ? [{ name, build: { ...build, piston: { ...part, piston: { ...part.piston, holes: changed } } } }]
      : [];
  return [
    ...as(larger, `every hole ${formatQuantity(drilled, 'length', 'mm')} larger`),
    ...as(more, `one hole of ${formatQuantity(first.diameter, 'length', 'mm')} more`),
  ];
}

function otherPistons({ pistons }: Parts, build: Build): readonly Change[] {
  return pistons
    .filter(({ name, piston }) => name !== build.piston.name && runsIn(piston.diameter, build.shock.bore))
    .map((piston) => ({ name: `piston ${piston.name}`, build: { ...build, piston } }));
}

function otherSprings({ springs }: Parts, build: Build): readonly Change[] {
  return springs
    .filter(({ name }) => name !== build.spring?.name)
    .map((spring) => ({
      name: `spring ${spring.name}, ${formatQuantity(spring.rate, 'springRate', 'N/mm', 3)}`,
      build: { ...build, spring },
    }));
}

/** A spacer on the shaft inside the body: the shaft comes out less far. */
function limited(build: Build): readonly Change[] {
  const { shock } = build;
  if (!knownShock(build).known.gas) return [];
  const lengths = shock.lengths && { ...shock.lengths, innerSpacers: shock.lengths.innerSpacers + limiter };
  const { closing } = knownShock(build).closed;
  return [
    {
      name: limiterName,
      // The shaft is as far in the body as before where the cap is closed.
      build: {
        ...build,
        shock: { ...shock, stroke: shock.stroke - limiter, ...(lengths && { lengths }) },
        closeAt: Math.max(0, closing.position - limiter),
      },
    },
  ];
}

/** Where the cap could be closed instead. */
function habits(build: Build): readonly Change[] {
  const { stroke } = build.shock;
  const { position } = knownShock(build).closed.closing;
  return [
    { name: 'closed fully out', place: 0 },
    { name: 'closed half way in', place: stroke / 2 },
    { name: 'closed fully in', place: stroke },
  ]
    .filter(({ place }) => Math.abs(place - position) > sameLength)
    .map(({ name, place }) => ({ name, build: { ...build, closeAt: place } }));
}
