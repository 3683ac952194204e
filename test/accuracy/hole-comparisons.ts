import { apparentMass } from '../../lib/flow/hole/apparent-mass.js';
import { sharpHoleLaw } from '../../lib/flow/hole/sharp-hole.js';
import checks from '../published/flow-checks.json' with { type: 'json' };
import earlier from '../reference/held-out-rows.json' with { type: 'json' };
import { holeReferenceRows } from '../reference/hole-reference.js';
import { lawOf } from '../reference/shape-law.js';
import {
  fittedShapes,
  heldOutShapes,
  type ShapePoint,
  type ShapeReference,
  shapeFamilies,
} from '../reference/shape-reference.js';
import { unsteadyRows } from '../reference/unsteady-rows.js';
import type { Comparison } from './comparison.js';

interface Span {
  readonly name: string;
  readonly holds: (point: ShapePoint) => boolean;
}

const spans: readonly Span[] = [
  { name: 'Re to 30', holds: ({ reynoldsNumber }) => reynoldsNumber <= 30 },
  { name: 'Re 30 to 800', holds: ({ reynoldsNumber, jetInside }) => reynoldsNumber > 30 && !jetInside },
  { name: 'jet off the wall inside the hole', holds: ({ jetInside }) => jetInside },
];

const own = { source: 'own solutions, axisymmetric, steady', obtained: 'computed here' } as const;
const test = 'test/reference/shape-law.test.ts';

type Error = (hole: ShapeReference, point: ShapePoint) => number;

const ofDrop: Error = (hole, { reynoldsNumber, euler }) => lawOf(hole, reynoldsNumber).euler / euler - 1;

const ofRecoil: Error = (hole, { reynoldsNumber, euler, force }) =>
  (euler - lawOf(hole, reynoldsNumber).recoil) / force - 1;

const ofForce: Error = (hole, { reynoldsNumber, force }) => {
  const { euler, recoil } = lawOf(hole, reynoldsNumber);
  return (euler - recoil) / force - 1;
};

function errors(holes: readonly ShapeReference[], span: Span['holds'], error: Error): readonly number[] {
  return holes.flatMap((hole) => hole.points.filter(span).map((point) => error(hole, point)));
}

const extent = (values: readonly number[]) => `${Math.min(...values)} to ${Math.max(...values)}`;

/** The rows of the first fit of sharp holes, with those of today's file. */
const firstSharp = holeReferenceRows();

const sharpHole = (lengthRatio: number, areaRatio: number) => ({ diameter: 1, lengthRatio, areaRatio });

const drops: readonly Comparison[] = shapeFamilies.flatMap((family) => {
  const of = (holes: readonly ShapeReference[]) => holes.filter((hole) => hole.family === family);
  return spans.flatMap(({ name, holds }) => {
    const first =
      family === 'sharp' && name !== spans[2]?.name
        ? firstSharp
            .filter(({ reynoldsNumber }) => reynoldsNumber <= 30 === (name === spans[0]?.name))
            .map(
              ({ lengthRatio, reynoldsNumber, eulerNumber }) =>
                lawOf(sharpHole(lengthRatio, 0.04), reynoldsNumber).euler / eulerNumber - 1,
            )
        : [];
    const fitted = [...first, ...errors(of(fittedShapes), holds, ofDrop)];
    const heldOut = errors(of(heldOutShapes), holds, ofDrop);
    if (fitted.length + heldOut.length === 0) return [];
    const lengths = extent(of([...fittedShapes, ...heldOutShapes]).map(({ lengthRatio }) => lengthRatio));
    return [
      {
        ...own,
        quantity: `pressure drop, ${family}`,
        range: `L/d ${lengths}, ${name}`,
        fitted,
        heldOut,
        test,
      },
    ];
  });
});

const always = () => true;

const forces: readonly Comparison[] = [
  {
    ...own,
    quantity: 'recoil of the jets, in parts of the force',
    range: 'every shape above, Re to 800',
    fitted: errors(fittedShapes, always, ofRecoil),
    heldOut: errors(heldOutShapes, always, ofRecoil),
    test,
  },
  {
    ...own,
    quantity: 'force on the piston, law and recoil together',
    range: 'the same, jets on the wall',
    fitted: errors(fittedShapes, ({ jetInside }) => !jetInside, ofForce),
    heldOut: errors(heldOutShapes, ({ jetInside }) => !jetInside, ofForce),
    test,
  },
];

/** Solutions with a bore that slips; their pressure before the hole is the static one. */
const slipping: Comparison = {
  ...own,
  quantity: 'pressure drop, sharp, in a bore that moves with the oil',
  range: `L/d ${extent(earlier.map(({ lengthRatio }) => lengthRatio))}, 1 to 12 % of the bore, Re to 800`,
  fitted: [],
  heldOut: earlier.flatMap(({ lengthRatio, areaRatio, points }) =>
    points.map(
      ([reynoldsNumber = 0, face = 0]) =>
        (lawOf(sharpHole(lengthRatio, areaRatio), reynoldsNumber).euler - areaRatio ** 2) / face - 1,
    ),
  ),
  test: 'test/reference/held-out.test.ts',
};

const secondSolver: Comparison = {
  quantity: 'pressure drop, sharp, a plate between chambers',
  range: 'L/d 1 to 3, Re to 800',
  source: 'a second solver (Q2-Q1 elements)',
  obtained: 'computed here',
  fitted: [],
  heldOut: checks.numericalReference
    .filter(({ case: name }) => name === 'cell4')
    .flatMap(({ L_over_d: lengthRatio, Re_y: points }) =>
      points
        .filter(([reynoldsNumber = 0]) => reynoldsNumber > 0 && reynoldsNumber <= 800)
        .map(([reynoldsNumber = 0, drop = 0]) => {
          const fluid = { density: 2, kinematicViscosity: 1 / reynoldsNumber };
          const law = sharpHoleLaw.resistance({ diameter: 1, length: lengthRatio }, fluid).pressureDrop(1);
          return law / ((2 * drop) / reynoldsNumber) - 1;
        }),
    ),
  test: 'test/reference/hole-reference.test.ts',
};

/** The mass over what is in phase with the acceleration, where both are those of slow changes. */
function massErrors(): readonly number[] {
  const diameter = 1.3e-3;
  const fluid = { density: 970, kinematicViscosity: 3.5e-4 };
  return unsteadyRows()
    .filter(({ frequencyNumber }) => frequencyNumber <= 1)
    .map(({ lengthRatio, frequencyNumber, imaginary }) => {
      const mass = apparentMass({ diameter, length: lengthRatio * diameter }, fluid);
      const whole = fluid.density * (Math.PI / 4) * diameter ** 3;
      return (mass / whole) * (frequencyNumber / imaginary) - 1;
    });
}

const mass: Comparison = {
  quantity: 'apparent mass of the oil in and about a hole',
  range: 'L/d 0.5 to 3, ω d²/ν to 1',
  source: 'own solutions, creeping flow that swings',
  obtained: 'computed here',
  fitted: massErrors(),
  heldOut: [],
  test: 'test/reference/unsteady-hole.test.ts',
};

export const holeComparisons: readonly Comparison[] = [...drops, ...forces, slipping, secondSolver, mass];
