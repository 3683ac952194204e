import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import type { OilPart, Parts } from '../../lib/parts/parts.js';
import { cSt } from '../base/decision-cases.js';
import type { Tried } from './landing-blocks.js';
import { type Landings, type Outcome, travelOf } from './landings.js';
import type { Match, MatchedFill } from './matched.js';
import { type SameLanding, siliconeOf } from './same-landing.js';

/** Bottles whose landing is looked at: thicker oil goes in less, so that the nearest in viscosity are the nearest in travel. */
const mostLanded = 4;

/** The oil of a bottle, of the shop or at hand. */
function bottled({ shop, oils }: Parts, name: string): OilPart | undefined {
  return [...(shop ?? []), ...oils].find((oil) => oil.name === name);
}

/** The bottles nearest to a viscosity with their landings, those first that go in most nearly as wanted. */
export function nearestLandings(
  { liked, on }: Landings,
  parts: Parts,
  fills: readonly MatchedFill[],
  kinematicViscosity: number,
  temperature: number,
): readonly MatchedFill[] {
  const off = (landing: Outcome): number =>
    typeof landing === 'string' ? Number.POSITIVE_INFINITY : Math.abs(travelOf(landing) - travelOf(liked));
  return fills
    .flatMap((fill) => {
      const oil = bottled(parts, fill.name);
      if (oil === undefined) return [];
      const own = fluidAt(createOil(oil.definition), temperature).kinematicViscosity;
      return [{ fill, oil, apart: Math.abs(Math.log(own / kinematicViscosity)) }];
    })
    .sort((a, b) => a.apart - b.apart)
    .slice(0, mostLanded)
    .map(({ fill, oil }) => ({ fill: { ...fill, landing: on(oil) }, oil }))
    .sort((a, b) => off(a.fill.landing) - off(b.fill.landing))
    .map(({ fill }) => fill);
}

/** The oils of the table of landings: nothing done, and the nearest bottle; where the landing should come back, the exact oil and every bottle near it. */
export function oilsToLand(
  parts: Parts,
  { build, singles, temperature }: Match,
  kinematicViscosity: number,
  label: number,
  same: SameLanding | undefined,
): readonly Tried[] {
  const shown = same === undefined ? singles.slice(0, 1) : singles;
  return [
    ...(same?.found
      ? [{ label: `exact: ${cSt(label)}`, oil: siliconeOf(kinematicViscosity, temperature) }]
      : []),
    ...shown.flatMap(({ name }) => {
      const oil = bottled(parts, name);
      return oil === undefined ? [] : [{ label: name, oil }];
    }),
    ...(shown.some(({ name }) => name === build.oil.name)
      ? []
      : [{ label: `${build.oil.name}, nothing done`, oil: build.oil }]),
  ];
}
