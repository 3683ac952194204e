import type { HoleGroup } from '../../flow/geometry/piston.js';
import { edgeDepth } from '../../flow/hole/hole-shape.js';
import { formatQuantity } from '../../units/index.js';

const millimetres = (value: number): string => formatQuantity(value, 'length', 'mm', 4);

/** Says where the shape of a hole does not go into a plate of this thickness, or nothing. */
export function holeShapeFault(
  { shape }: HoleGroup,
  thickness: number,
): readonly [readonly string[], string] | undefined {
  if (shape?.kind === 'stepped' && shape.shaftSideLength >= thickness) {
    return [
      ['shaft-side-length'],
      `must be less than the thickness of ${millimetres(thickness)}, got ${millimetres(shape.shaftSideLength)}: ` +
        `${millimetres(shape.shaftSideLength - thickness)} too long`,
    ];
  }
  if (shape?.kind !== 'straight') return undefined;
  const [blind, shaft] = [edgeDepth(shape.blindEdge), edgeDepth(shape.shaftEdge)];
  if (blind + shaft < thickness) return undefined;
  const which = blind >= shaft ? 'blind-edge' : 'shaft-edge';
  const both = blind > 0 && shaft > 0 ? 'with the other edge ' : '';
  return [
    [which],
    `is too deep: ${both}it takes ${millimetres(blind + shaft)} of a plate of ${millimetres(thickness)}, ` +
      `${millimetres(blind + shaft - thickness)} too much`,
  ];
}
