import { creepingEnds, creepingTube } from '../../lib/flow/hole/sharp-hole.js';
import type { CheckBlock, RevealBlock, RevealedBlock, TableBlock } from '../../lib/page/index.js';
import type { Cell } from '../../lib/plot/chart/table.js';
import { formatQuantity, roundedText } from '../../lib/units/index.js';
import { pointAt } from '../base/oil-forces.js';
import { percent, shaftSpeed } from '../base/wording.js';
import { type Bench, crawl, holdsBack, holeSpeed } from './bench.js';
import { beforeAfterFigure } from './figure.js';

/** The shock before and after a change, and the shaft speeds looked at. */
export interface Experiment {
  readonly before: Bench;
  readonly after: Bench;
  readonly slow: number;
  readonly fast: number;
}

const millimetres = (size: number): string => formatQuantity(size, 'length', 'mm', 3);

/** Wider holes: the law of the hole by hand. */
export function diameterExperiment(experiment: Experiment): RevealBlock {
  const { before, after, slow } = experiment;
  const ratio = before.holeDiameter / after.holeDiameter;
  const byHand = creepingDrop(after) / creepingDrop(before);
  const onPage = dropAt(after, crawl) / dropAt(before, crawl);
  const formula = `Δp = (μ V / d) (18.7 + ${creepingTube} L / d)`;
  return {
    kind: 'reveal',
    id: 'hole-diameter',
    question: `Each hole is drilled from ${millimetres(before.holeDiameter)} to ${millimetres(after.holeDiameter)}. What is left of the force at ${shaftSpeed(slow)}?`,
    choices: [
      `As the diameter: ${percent(ratio)}.`,
      `As the area: ${percent(ratio ** 2)}.`,
      `Still ${ratio < 1 ? 'less' : 'more'}: about ${percent(ratio ** 3.5)}.`,
    ],
    blocks: [
      { kind: 'text', text: `C. ${percent(left(experiment, slow))} is left.` },
      {
        kind: 'figure',
        figure: beforeAfterFigure('wider-holes', 'Two hole diameters', [before, after], experiment.fast),
      },
      handTable('by-hand-diameter', experiment),
      {
        kind: 'text',
        text: `By hand: so slowly the pressure drop is ${formula}, with viscosity μ, hole speed V, hole diameter d and piston thickness L of the table. Work it out for both rows.`,
      },
      handCheck('The pressure drops by hand are as far apart as those of the page', byHand, onPage),
    ],
  };
}

/** More holes: the flow by hand. */
export function countExperiment(experiment: Experiment): RevealBlock {
  const { before, after, slow, fast } = experiment;
  return {
    kind: 'reveal',
    id: 'hole-count',
    question: `There ${after.holeCount === 1 ? 'is' : 'are'} ${after.name} of ${millimetres(before.holeDiameter)} in place of ${before.name}. What is left of the force at ${shaftSpeed(slow)}, and at ${shaftSpeed(fast)}?`,
    choices: [
      `${percent(before.holeCount / after.holeCount)} at both.`,
      `About ${percent(before.holeCount / after.holeCount)} when slow, and less when fast.`,
      `About ${percent(before.holeCount / after.holeCount)} when slow, and more when fast.`,
    ],
    blocks: [
      {
        kind: 'text',
        text: `${percent(left(experiment, slow))} is left at ${shaftSpeed(slow)} and ${percent(left(experiment, fast))} at ${shaftSpeed(fast)}: the flow is shared by other numbers of holes, and what inertia costs goes with the square of the hole speed.`,
      },
      { kind: 'figure', figure: beforeAfterFigure('more-holes', 'Two hole counts', [before, after], fast) },
      handTable('by-hand-count', experiment),
      {
        kind: 'text',
        text: 'By hand: the flow is shaft speed times damping area. Take off the leak past the rim, divide by the area of all holes, and you have the hole speed of the table. Work it out for both rows.',
      },
      handCheck(
        'The hole speeds by hand are those of the page',
        speedByHand(before) / speedByHand(after),
        holeSpeed(before, crawl) / holeSpeed(after, crawl),
      ),
    ],
  };
}

/** Warmer oil: the viscosity by hand. */
export function temperatureExperiment(experiment: Experiment): RevealBlock {
  const { before, after, slow, fast } = experiment;
  return {
    kind: 'reveal',
    id: 'oil-temperature',
    question: `The oil goes from ${before.name} to ${after.name}. Where does the force change by the larger part?`,
    choices: [`At ${shaftSpeed(slow)}.`, `At ${shaftSpeed(fast)}.`, 'The same part at every speed.'],
    blocks: [
      {
        kind: 'text',
        text: `${percent(left(experiment, slow))} is left at ${shaftSpeed(slow)} and ${percent(left(experiment, fast))} at ${shaftSpeed(fast)}: warm oil is thinner, but hardly lighter, and inertia asks for density.`,
      },
      {
        kind: 'figure',
        figure: beforeAfterFigure('warmer-oil', 'Two oil temperatures', [before, after], fast),
      },
      handTable('by-hand-temperature', experiment),
      {
        kind: 'text',
        text: 'By hand: so slowly the force goes with the viscosity. Divide the viscosities of the table, then the forces.',
      },
      handCheck(
        'The viscosities are as far apart as the slow forces',
        viscosity(after) / viscosity(before),
        holdsBack(after, crawl) / holdsBack(before, crawl),
      ),
    ],
  };
}

/** The numbers that a hand calculation needs, before and after. */
function handTable(id: string, { before, after }: Experiment): TableBlock {
  return {
    kind: 'table',
    id,
    title: `Numbers for a calculation by hand, rebound at ${shaftSpeed(crawl)}`,
    table: {
      columns: [
        { label: 'Case', unit: '' },
        { label: 'Viscosity', unit: 'Pa·s', dimension: 'dynamicViscosity' },
        { label: 'Thickness', unit: 'mm', dimension: 'length' },
        { label: 'Holes', unit: '' },
        { label: 'Hole diameter', unit: 'mm', dimension: 'length' },
        { label: 'Damping area', unit: 'mm²', dimension: 'area', digits: 4 },
        { label: 'Leak past the rim', unit: '%', dimension: 'ratio' },
        { label: 'Hole speed', unit: 'mm/s', dimension: 'speed', digits: 4 },
        { label: 'Pressure drop', unit: 'Pa', dimension: 'pressure', digits: 4 },
        { label: 'Force', unit: 'N', dimension: 'force', digits: 4 },
      ],
      rows: [before, after].map((one): readonly Cell[] => [
        one.name,
        viscosity(one),
        one.model.damper.piston.thickness,
        one.holeCount,
        one.holeDiameter,
        one.model.dampingArea,
        pointAt(one.model, -crawl).leakShare,
        holeSpeed(one, crawl),
        dropAt(one, crawl),
        holdsBack(one, crawl),
      ]),
    },
  };
}

function handCheck(claim: string, byHand: number, onPage: number): CheckBlock & RevealedBlock {
  // A hand calculation leaves out inertia, and the drag of the oil on the rim.
  const passed = Math.abs(byHand / onPage - 1) < 0.03;
  const shown = (ratio: number): string => roundedText(ratio, 3);
  return {
    kind: 'check',
    claim,
    passed,
    detail: `${shown(byHand)} by hand, ${shown(onPage)} on the page; 3 % allowed`,
  };
}

function left({ before, after }: Experiment, speed: number): number {
  return holdsBack(after, speed) / holdsBack(before, speed);
}

function viscosity({ model }: Bench): number {
  return model.fluid.kinematicViscosity * model.fluid.density;
}

function dropAt({ model }: Bench, speed: number): number {
  return -pointAt(model, -speed).pressureDrop;
}

function creepingDrop(one: Bench): number {
  const { thickness } = one.model.damper.piston;
  const number = creepingEnds + (creepingTube * thickness) / one.holeDiameter;
  return (viscosity(one) * holeSpeed(one, crawl) * number) / one.holeDiameter;
}

function speedByHand(one: Bench): number {
  const leak = pointAt(one.model, -crawl).leakShare;
  const holes = (one.holeCount * Math.PI * one.holeDiameter ** 2) / 4;
  return (crawl * one.model.dampingArea * (1 - leak)) / holes;
}
