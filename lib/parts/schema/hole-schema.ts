import * as z from 'zod/mini';
import type { HoleEdge, HoleShape } from '../../flow/geometry/hole-shape.js';
import type { HoleGroup } from '../../flow/geometry/piston.js';
import { countField } from './plain-field.js';
import { quantityField } from './quantity-field.js';
import { record } from './record.js';
import { report } from './schema-issue.js';

/** The usual countersink: 45° from the axis. */
const usualAngle = Math.PI / 4;

const size = (to: string, example: string, description: string) =>
  quantityField({ dimension: 'length', from: '0.01 mm', to, example, description });

const edgeSchema = (side: string) =>
  record(
    {
      chamfer: z.optional(size('10 mm', '0.2 mm', 'Depth of a chamfer along the hole')),
      angle: z.optional(
        quantityField({
          dimension: 'angle',
          from: '5 °',
          to: '80 °',
          example: '45 °',
          description: 'Angle between chamfer and axis of the hole; by default 45°',
        }),
      ),
      radius: z.optional(size('10 mm', '0.2 mm', 'Radius of a rounding; instead of a chamfer')),
    },
    { description: `Edge of the hole at the ${side}; sharp if left out.` },
  );

const holeShapeFields = {
  count: countField(50, { description: 'How many holes of this size.', examples: [2] }),
  diameter: quantityField({
    dimension: 'length',
    from: '0.1 mm',
    to: '10 mm',
    example: '1.7 mm',
    description: 'Diameter of each of these holes',
  }),
  'pitch-circle': z.optional(
    size('40 mm', '7.8 mm', 'Diameter of the circle through the centres; needed under a valve'),
  ),
  'blind-edge': z.optional(edgeSchema('blind side')),
  'shaft-edge': z.optional(edgeSchema('shaft side')),
  'shaft-side-diameter': z.optional(
    size('10 mm', '1.9 mm', 'Diameter at the shaft side of a tapered or stepped hole'),
  ),
  'shaft-side-length': z.optional(
    size('20 mm', '1 mm', 'Length of the shaft-side part of a stepped hole; without it the hole tapers'),
  ),
  'slot-travel': z.optional(
    size('20 mm', '1 mm', 'Distance between the round ends of a slot, centre to centre'),
  ),
};

type HoleEntry = z.output<ReturnType<typeof holeRecord>>;
type EdgeEntry = z.output<ReturnType<typeof edgeSchema>>;

function holeRecord() {
  return record(holeShapeFields, { description: 'Holes of one size and shape.' });
}

/** Holes of one size. */
export const holeSchema = z.pipe(
  holeRecord(),
  z.transform((entry, payload): HoleGroup => {
    for (const key of ['blind-edge', 'shaft-edge'] as const) {
      const fault = edgeFault(entry[key]);
      if (fault !== undefined) report(payload, [key], fault);
    }
    const fault = shapeFault(entry);
    if (fault !== undefined) report(payload, [fault.key], fault.message);
    const shape = holeShape(entry);
    const pitch = entry['pitch-circle'];
    return {
      count: entry.count,
      diameter: entry.diameter,
      ...(shape === undefined ? {} : { shape }),
      ...(pitch === undefined ? {} : { pitchDiameter: pitch }),
    };
  }),
);

function edgeFault(edge: EdgeEntry | undefined): string | undefined {
  if (edge === undefined) return undefined;
  const { angle, chamfer, radius } = edge;
  if ((chamfer === undefined) === (radius === undefined)) return 'must have either "chamfer" or "radius"';
  return angle !== undefined && chamfer === undefined ? 'has an "angle" but no "chamfer"' : undefined;
}

function shapeFault(entry: HoleEntry): { readonly key: string; readonly message: string } | undefined {
  const edges = entry['blind-edge'] ?? entry['shaft-edge'];
  if (entry['shaft-side-length'] !== undefined && entry['shaft-side-diameter'] === undefined) {
    return { key: 'shaft-side-length', message: 'needs "shaft-side-diameter" beside it' };
  }
  const kinds = [edges, entry['shaft-side-diameter'], entry['slot-travel']];
  if (kinds.filter((kind) => kind !== undefined).length < 2) return undefined;
  return {
    key: entry['slot-travel'] === undefined ? 'shaft-side-diameter' : 'slot-travel',
    message: 'cannot be combined: a hole has edges, or a shaft-side diameter, or is a slot',
  };
}

function holeEdge(edge: EdgeEntry | undefined): HoleEdge | undefined {
  if (edge?.radius !== undefined) return { kind: 'rounded', radius: edge.radius };
  if (edge?.chamfer === undefined) return undefined;
  return { kind: 'chamfered', depth: edge.chamfer, halfAngle: edge.angle ?? usualAngle };
}

function holeShape(entry: HoleEntry): HoleShape | undefined {
  const travel = entry['slot-travel'];
  if (travel !== undefined) return { kind: 'slot', travel };
  const shaftSideDiameter = entry['shaft-side-diameter'];
  const shaftSideLength = entry['shaft-side-length'];
  if (shaftSideDiameter !== undefined) {
    return shaftSideLength === undefined
      ? { kind: 'conical', shaftSideDiameter }
      : { kind: 'stepped', shaftSideDiameter, shaftSideLength };
  }
  const blindEdge = holeEdge(entry['blind-edge']);
  const shaftEdge = holeEdge(entry['shaft-edge']);
  if (blindEdge === undefined && shaftEdge === undefined) return undefined;
  return {
    kind: 'straight',
    ...(blindEdge === undefined ? {} : { blindEdge }),
    ...(shaftEdge === undefined ? {} : { shaftEdge }),
  };
}
