/**
 * The edge of a hole at one face of the piston.
 *
 * @public
 */
export type HoleEdge =
  | {
      readonly kind: 'rounded';
      /** Radius of the rounding [m], above 0 and less than the thickness. */
      readonly radius: number;
    }
  | {
      readonly kind: 'chamfered';
      /** Depth of the chamfer along the hole [m], above 0 and less than the thickness. */
      readonly depth: number;
      /** Angle between chamfer and axis [rad], above 0 to 1.4 (80°); 45° is usual. */
      readonly halfAngle: number;
    };

/**
 * The shape of a hole along its length. The two ends are named by the side of the piston they open to.
 *
 * @public
 */
export type HoleShape =
  | { readonly kind: 'straight'; readonly blindEdge?: HoleEdge; readonly shaftEdge?: HoleEdge }
  | {
      readonly kind: 'conical';
      /** Diameter at the shaft side [m], above 0; the group's own diameter is that at the blind side. */
      readonly shaftSideDiameter: number;
    }
  | {
      readonly kind: 'stepped';
      /** Diameter of the part at the shaft side [m], above 0. */
      readonly shaftSideDiameter: number;
      /** Length of the part at the shaft side [m], above 0 and less than the thickness. */
      readonly shaftSideLength: number;
    }
  | {
      readonly kind: 'slot';
      /** Distance between the centres of its round ends [m], above 0; the group's diameter is its width. */
      readonly travel: number;
    };
