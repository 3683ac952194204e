import { InputError } from '../../base/input-error.js';
import type { HoleGroup } from '../../flow/geometry/piston.js';
import { edgeDepth, requireHoleShape } from '../../flow/hole/hole-shape.js';
import { formatQuantity } from '../../units/index.js';

const millimetres = (value: number): string => formatQuantity(value, 'length', 'mm', 4);

/** Says where the shape of a hole does not go into a plate of this thickness, or nothing. */
export function holeShapeFault(
  group: HoleGroup,
  thickness: number,
): readonly [readonly string[], string] | undefined {
  try {
    requireHoleShape(group, thickness, 'hole');
  } catch (error) {
    if (!(error instanceof InputError)) throw error;
    return shapeWords(error, group);
  }
  return undefined;
}

/** Says in keys and units of a parts file why a shape does not go into its plate. */
function shapeWords(
  { field, value, limits }: InputError,
  { shape }: HoleGroup,
): readonly [readonly string[], string] {
  const got = typeof value === 'number' ? value : Number.NaN;
  const { below: thickness = Number.NaN } = limits;
  const plate = millimetres(thickness);
  const excess = millimetres(got - thickness);
  if (field === 'hole.shape.shaftSideLength')
    return [
      ['shaft-side-length'],
      `must be less than the thickness of ${plate}, got ${millimetres(got)}: ${excess} too long`,
    ];
  const edge = /Edge/u.test(field) ? /blind|shaft/u.exec(field)?.[0] : deeperEdge(shape);
  const other = field === 'hole.shape' ? 'with the other edge ' : '';
  return [
    [`${edge}-edge`],
    `is too deep: ${other}it takes ${millimetres(got)} of a plate of ${plate}, ${excess} too much`,
  ];
}

function deeperEdge(shape: HoleGroup['shape']): 'blind' | 'shaft' {
  if (shape?.kind !== 'straight') return 'blind';
  return edgeDepth(shape.blindEdge) >= edgeDepth(shape.shaftEdge) ? 'blind' : 'shaft';
}
