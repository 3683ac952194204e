import { readFileSync } from 'node:fs';
import { csvParse } from 'd3-dsv';
import type { HoleEdge, HoleShape } from '../../lib/flow/geometry/hole-shape.js';

/** One solution of a hole; pressures and forces over the dynamic pressure of the mean speed at the narrowest. */
export interface ShapePoint {
  readonly reynoldsNumber: number;
  /** From the total pressure before the hole to the mean over the face behind it: what a hole law predicts. */
  readonly euler: number;
  /** Force on the plate over the area of the bore. */
  readonly force: number;
  /** Whether the jet has left the wall of a widening hole: a real one may then be unsteady. */
  readonly jetInside: boolean;
}

/** One hole that was solved, with its narrowest diameter as unit of length; the oil flows towards the shaft side. */
export interface ShapeReference {
  readonly name: string;
  readonly family: ShapeFamily;
  readonly diameter: number;
  /** Left out for a straight sharp hole. */
  readonly shape?: HoleShape;
  readonly lengthRatio: number;
  readonly areaRatio: number;
  readonly points: readonly ShapePoint[];
}

export const shapeFamilies = [
  'sharp',
  'edges',
  'taper that narrows',
  'taper that widens',
  'step that narrows',
  'step that widens',
] as const;

export type ShapeFamily = (typeof shapeFamilies)[number];

type Cells = Readonly<Record<string, string>>;

function cell(row: Cells, name: string): string {
  const text = row[name];
  if (text === undefined) throw new Error(`no column ${name}`);
  return text;
}

function number(row: Cells, name: string): number {
  const value = Number(cell(row, name));
  if (!Number.isFinite(value)) throw new Error(`${name} is no number: ${cell(row, name)}`);
  return value;
}

function edge(row: Cells, end: 'inlet' | 'outlet'): HoleEdge | undefined {
  const size = number(row, `${end}_edge_size`);
  switch (cell(row, `${end}_edge`)) {
    case 'sharp':
      return undefined;
    case 'rounded':
      return { kind: 'rounded', radius: size };
    case 'chamfered':
      return {
        kind: 'chamfered',
        depth: size,
        halfAngle: (number(row, `${end}_half_angle_deg`) * Math.PI) / 180,
      };
    default:
      throw new Error(`unknown edge ${cell(row, `${end}_edge`)}`);
  }
}

function shapeOf(row: Cells): HoleShape | undefined {
  const [before, behind] = [number(row, 'd_in'), number(row, 'd_out')];
  const step = number(row, 'step_length');
  if (step > 0) {
    return {
      kind: 'stepped',
      shaftSideDiameter: behind,
      shaftSideLength: number(row, 'L_over_d') - step,
    };
  }
  if (before !== behind) return { kind: 'conical', shaftSideDiameter: behind };
  const [blindEdge, shaftEdge] = [edge(row, 'inlet'), edge(row, 'outlet')];
  if (blindEdge === undefined && shaftEdge === undefined) return undefined;
  return { kind: 'straight', ...(blindEdge && { blindEdge }), ...(shaftEdge && { shaftEdge }) };
}

function familyOf(diameter: number, shape: HoleShape | undefined): ShapeFamily {
  if (shape === undefined) return 'sharp';
  if (shape.kind === 'straight') return 'edges';
  if (shape.kind === 'slot') throw new Error('a slot is no hole of revolution');
  const part = shape.kind === 'conical' ? 'taper' : 'step';
  return `${part} that ${shape.shaftSideDiameter > diameter ? 'widens' : 'narrows'}`;
}

/** Holes of a file in the order of its rows; where a case was solved twice, the finer mesh counts. */
function readShapes(file: string): readonly ShapeReference[] {
  const rows = csvParse(readFileSync(new URL(file, import.meta.url), 'utf8')) as readonly Cells[];
  const names = [...new Set(rows.map((row) => cell(row, 'geometry')))];
  return names.map((name) => {
    const own = rows.filter((row) => cell(row, 'geometry') === name);
    const [first] = own;
    if (first === undefined) throw new Error(`no rows of ${name}`);
    const finest = new Map<number, Cells>();
    for (const row of own) {
      const reynoldsNumber = number(row, 'Re');
      const other = finest.get(reynoldsNumber);
      if (other === undefined || number(row, 'mesh_factor') < number(other, 'mesh_factor')) {
        finest.set(reynoldsNumber, row);
      }
    }
    const diameter = number(first, 'd_in');
    const shape = shapeOf(first);
    return {
      name,
      family: familyOf(diameter, shape),
      diameter,
      ...(shape && { shape }),
      lengthRatio: number(first, 'L_over_d'),
      areaRatio: number(first, 'area_ratio'),
      points: [...finest].map(([reynoldsNumber, row]) => ({
        reynoldsNumber,
        euler: number(row, 'Eu_no_recovery'),
        force: number(row, 'force_over_area'),
        jetInside: cell(row, 'steady_doubtful') === 'jet inside the hole',
      })),
    };
  });
}

const geometryKey = ({ diameter, shape, lengthRatio, areaRatio }: ShapeReference) =>
  JSON.stringify([diameter, shape, lengthRatio, areaRatio.toFixed(4)]);

/** Holes solved with another set of meshes and definitions checked twice; each second one of a family is kept out of the fit. */
const solvedElsewhere = readShapes('open-shapes.csv');

/** Whether a hole is the second, fourth, … of its family in the file: fixed, and by geometry. */
const isHeldOut = (hole: ShapeReference) =>
  solvedElsewhere.filter(({ family }) => family === hole.family).indexOf(hole) % 2 === 1;

/** Holes that no constant of the laws was fitted to. */
export const heldOutShapes = solvedElsewhere.filter(isHeldOut);

const heldOutKeys = new Set(heldOutShapes.map(geometryKey));

/** Holes that the constants of the laws were fitted to. A hole solved here that is among the held-out ones counts for nothing. */
export const fittedShapes = [
  ...solvedElsewhere.filter((hole) => !isHeldOut(hole)),
  ...readShapes('own-shapes.csv').filter((hole) => !heldOutKeys.has(geometryKey(hole))),
];
