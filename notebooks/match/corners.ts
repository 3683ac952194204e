import type { Damper } from '../../lib/damper/damper.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { scaledDamping, type WantedDamping } from '../../lib/decisions/match/damping-mismatch.js';
import { matchViscosity } from '../../lib/decisions/match/match-viscosity.js';
import {
  cornerMotion,
  dampingRatio,
  reloadedCorner,
  type SpringCorner,
} from '../../lib/decisions/pair/setting.js';
import { oilDensity, typicalDensityAt15Celsius } from '../../lib/fluid/oil/density.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import type { Block } from '../../lib/page/blocks/block.js';
import type { Build } from '../../lib/parts/parts.js';
import { formatQuantity } from '../../lib/units/index.js';
import { cSt, damperOfBuild, feelsRight, labelOf } from '../base/decision-cases.js';
import { knownOil } from '../base/known.js';
import { pointAt } from '../base/oil-forces.js';
import { celsius, percent, shaftSpeed } from '../base/wording.js';

function cornerOf({ corner, spring }: Build): SpringCorner | undefined {
  return corner === undefined || spring === undefined ? undefined : { ...corner, springRate: spring.rate };
}

/** Frequency and damping ratio of every build that names its corner and its spring, side by side. */
export function cornerTable(
  builds: readonly Build[],
  right: number,
  slow: number,
  fast: number,
): readonly Block[] {
  const corners = builds.flatMap((build) => {
    const corner = cornerOf(build);
    if (corner === undefined) return [];
    const { oil, temperature } = feelsRight(build, right);
    const model = damperModel(damperOfBuild(build), fluidAt(knownOil(oil.definition), temperature));
    const ratio = (speed: number): number => dampingRatio(corner, pointAt(model, speed).dampingCoefficient);
    return [{ name: build.name, ...cornerMotion(corner), ratio }];
  });
  if (corners.length === 0) return [];
  // One column a corner: few columns fit a phone, many rows do.
  const ratioRows = [slow, fast].flatMap((speed) => [
    [`Ratio, rebound ${shaftSpeed(speed)}`, ...corners.map(({ ratio }) => ratio(-speed))],
    [`Ratio, compression ${shaftSpeed(speed)}`, ...corners.map(({ ratio }) => ratio(speed))],
  ]);
  return [
    { kind: 'heading', text: 'What it means for the car' },
    {
      kind: 'table',
      id: 'corners',
      title: 'How each corner rides, on the damping you like',
      note: 'Damping ratio: 1 is the least at which a corner does not swing; at 0.5 it swings past its place by a sixth.',
      table: {
        columns: [
          { label: 'Corner', unit: '' },
          ...corners.map(({ name }) => ({ label: name, unit: '', digits: 2 })),
        ],
        rows: [
          ['Swings, Hz', ...corners.map(({ naturalFrequency }) => naturalFrequency)],
          ['Critical damping, N·s/m', ...corners.map(({ criticalDamping }) => criticalDamping)],
          ...ratioRows,
        ],
      },
    },
  ];
}

/** Spring and oil that keep frequency and damping ratio in a heavier car. */
export function heavierText(
  build: Build,
  heavier: number,
  wanted: WantedDamping,
  temperature: number,
  damper: Damper,
): readonly Block[] {
  const corner = cornerOf(build);
  if (corner === undefined || heavier === 0) return [];
  const { springRate, dampingFactor, dampingFactorOldSpring } = reloadedCorner(
    corner,
    corner.sprungMass * (1 + heavier),
  );
  const density = oilDensity('silicone', temperature, typicalDensityAt15Celsius.silicone);
  const label = (factor: number): string => {
    const search = { damper, density, wanted: scaledDamping(wanted, factor) };
    return cSt(labelOf(matchViscosity(search).kinematicViscosity, temperature));
  };
  const weight = heavier > 0 ? `${percent(heavier)} heavier` : `${percent(-heavier)} lighter`;
  return [
    {
      kind: 'text',
      text: `If that corner gets ${weight}, a spring of ${formatQuantity(springRate, 'springRate', 'N/mm', 2)} and a ${label(dampingFactor)} bottle, for oil at ${celsius(temperature)}, keep how fast it swings and how soon it settles; with the old spring a ${label(dampingFactorOldSpring)} bottle keeps how soon it settles.`,
    },
  ];
}
