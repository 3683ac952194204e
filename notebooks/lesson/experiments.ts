import type { CheckBlock, RevealBlock, RevealedBlock, TableBlock } from '../../lib/page/index.js';
import type { Cell, Column } from '../../lib/plot/chart/table.js';
import { formatQuantity, roundedText } from '../../lib/units/index.js';
import { pointAt } from '../base/oil-forces.js';
import { percent, shaftSpeed } from '../base/wording.js';
import { type Bench, crawl, holdsBack, holeSpeed } from './bench.js';
import { beforeAfterFigure } from './figure.js';
import { largerChange, nearestChoice, slowAgainstFast } from './right-choice.js';

/** Poiseuille along a round hole, and Sampson at both its ends together. */
const alongHole = 32;
const atEnds = 6 * Math.PI;

/** The shock before and after a change, and the shaft speeds looked at. */
export interface Experiment {
  readonly before: Bench;
  readonly after: Bench;
  readonly slow: number;
  readonly middle: number;
}

const millimetres = (size: number): string => formatQuantity(size, 'length', 'mm', 3);

/** Wider holes: the law of the hole by hand. */
export function diameterExperiment(experiment: Experiment): RevealBlock {
  const { before, after, slow } = experiment;
  const ratio = before.holeDiameter / after.holeDiameter;
  const byHand = creepingDrop(after) / creepingDrop(before);
  const onPage = dropAt(after, crawl) / dropAt(before, crawl);
  const formula = 'Δp = (μ V / d) (6π + 32 L / d)';
  const guesses = [ratio, ratio ** 2, ratio ** 3.5];
  return {
    kind: 'reveal',
    id: 'hole-diameter',
    question: `Each hole goes from ${millimetres(before.holeDiameter)} to ${millimetres(after.holeDiameter)}. What is left of the force at ${shaftSpeed(slow)}?`,
    choices: [
      `As the diameter: ${percent(ratio)}.`,
      `As the area: ${percent(ratio ** 2)}.`,
      `Still ${ratio < 1 ? 'less' : 'more'}: about ${percent(ratio ** 3.5)}.`,
    ],
    blocks: [
      {
        kind: 'text',
        text: `${nearestChoice(left(experiment, slow), guesses)} comes nearest: ${percent(left(experiment, slow))} is left.`,
      },
      {
        kind: 'figure',
        figure: beforeAfterFigure('wider-holes', 'Two hole diameters', [before, after], experiment.middle),
      },
      handTable('by-hand-diameter', experiment, [handViscosity, handSpeed, handDrop]),
      {
        kind: 'text',
        text: `By hand: so slowly the pressure drop is ${formula}, with viscosity μ and hole speed V of the table, hole diameter d and piston thickness L, ${millimetres(before.model.damper.piston.thickness)}. Work it out for both rows.`,
      },
      handCheck('The pressure drops by hand are as far apart as those of the page', byHand, onPage),
    ],
  };
}

/** More holes: the flow by hand. */
export function countExperiment(experiment: Experiment): RevealBlock {
  const { before, after, slow, middle } = experiment;
  return {
    kind: 'reveal',
    id: 'hole-count',
    question: `There ${after.holeCount === 1 ? 'is' : 'are'} ${after.name} of ${millimetres(before.holeDiameter)} in place of ${before.name}. What is left of the force at ${shaftSpeed(slow)}, and at ${shaftSpeed(middle)}?`,
    choices: [
      `${percent(before.holeCount / after.holeCount)} at both.`,
      `About ${percent(before.holeCount / after.holeCount)} at ${shaftSpeed(slow)}, and less at ${shaftSpeed(middle)}.`,
      `About ${percent(before.holeCount / after.holeCount)} at ${shaftSpeed(slow)}, and more at ${shaftSpeed(middle)}.`,
    ],
    blocks: [
      {
        kind: 'text',
        text: `${slowAgainstFast(left(experiment, slow), left(experiment, middle))}. ${percent(left(experiment, slow))} is left at ${shaftSpeed(slow)} and ${percent(left(experiment, middle))} at ${shaftSpeed(middle)}: the flow is shared by other numbers of holes, and what inertia costs goes with the square of the hole speed.`,
      },
      { kind: 'figure', figure: beforeAfterFigure('more-holes', 'Two hole counts', [before, after], middle) },
      handTable('by-hand-count', experiment, [handViscosity, handDrop, handSpeed]),
      {
        kind: 'text',
        text: `By hand: the flow is shaft speed times damping area. Take off the leak past the rim, π D h³ Δp / (12 μ L), divide by the area of all holes, and you have the hole speed of the table. The sizes are: ${sizesText(before)}. Work it out for both rows.`,
      },
      handCheck(
        'The hole speeds by hand are as far apart as those of the page',
        speedByHand(before) / speedByHand(after),
        holeSpeed(before, crawl) / holeSpeed(after, crawl),
      ),
    ],
  };
}

/** Warmer oil: the viscosity by hand. */
export function temperatureExperiment(experiment: Experiment): RevealBlock {
  const { before, after, slow, middle } = experiment;
  return {
    kind: 'reveal',
    id: 'oil-temperature',
    question: `The oil goes from ${before.name} to ${after.name}. Where does the force change by the larger part?`,
    choices: [`At ${shaftSpeed(slow)}.`, `At ${shaftSpeed(middle)}.`, 'The same part at every speed.'],
    blocks: [
      {
        kind: 'text',
        text: `${largerChange(left(experiment, slow), left(experiment, middle))}. ${percent(left(experiment, slow))} is left at ${shaftSpeed(slow)} and ${percent(left(experiment, middle))} at ${shaftSpeed(middle)}: warm oil is thinner, but hardly lighter, and what it takes to speed it up goes with its density.`,
      },
      {
        kind: 'figure',
        figure: beforeAfterFigure('warmer-oil', 'Two oil temperatures', [before, after], middle),
      },
      handTable('by-hand-temperature', experiment, [handViscosity, handForce]),
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

/** A number of the hand calculations, with its column. */
interface HandNumber {
  readonly column: Column;
  readonly of: (one: Bench) => number;
}

const handViscosity: HandNumber = {
  column: { label: 'Viscosity', unit: 'Pa·s', dimension: 'dynamicViscosity' },
  of: viscosity,
};
const handSpeed: HandNumber = {
  column: { label: 'Hole speed', unit: 'mm/s', dimension: 'speed', digits: 4 },
  of: (one) => holeSpeed(one, crawl),
};
const handDrop: HandNumber = {
  column: { label: 'Δp', unit: 'Pa', dimension: 'pressure', digits: 4 },
  of: (one) => dropAt(one, crawl),
};
const handForce: HandNumber = {
  column: { label: 'Force', unit: 'N', dimension: 'force', digits: 4 },
  of: (one) => holdsBack(one, crawl),
};

/** The numbers that a hand calculation needs, before and after. */
function handTable(
  id: string,
  { before, after }: Experiment,
  numbers: readonly HandNumber[],
): TableBlock & RevealedBlock {
  return {
    kind: 'table',
    id,
    title: `Numbers for a calculation by hand, rebound at ${shaftSpeed(crawl)}`,
    table: {
      columns: [{ label: 'Case', unit: '' }, ...numbers.map(({ column }) => column)],
      rows: [before, after].map((one): readonly Cell[] => [one.name, ...numbers.map(({ of }) => of(one))]),
    },
  };
}

/** Sizes that stay the same: thickness, damping area, bore and gap. */
function sizesText({ model }: Bench): string {
  const { bore, piston } = model.damper;
  const area = formatQuantity(model.dampingArea, 'area', 'mm²', 4);
  const gap = formatQuantity((bore - piston.diameter) / 2, 'length', 'mm', 3);
  return `thickness L ${millimetres(piston.thickness)}, damping area ${area}, bore D ${millimetres(bore)}, gap h ${gap}`;
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
    ifFailed: 'Choose holes and a piston nearer to usual sizes: these are beyond the formula',
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
  const number = atEnds + (alongHole * thickness) / one.holeDiameter;
  return (viscosity(one) * holeSpeed(one, crawl) * number) / one.holeDiameter;
}

/** Flow by shaft and piston, less what leaks past the rim by the formula of a narrow gap, over the area of the holes. */
function speedByHand(one: Bench): number {
  const { damper, dampingArea } = one.model;
  const { bore, piston } = damper;
  const [gap, across] = [(bore - piston.diameter) / 2, (bore + piston.diameter) / 2];
  const eccentric = 1 + 1.5 * piston.eccentricity ** 2;
  const leak =
    (Math.PI * across * gap ** 3 * eccentric * dropAt(one, crawl)) / (12 * viscosity(one) * piston.thickness);
  const holes = (one.holeCount * Math.PI * one.holeDiameter ** 2) / 4;
  return (crawl * dampingArea - leak) / holes;
}
