import { requireNotNegative, requireRecord } from '../../base/checks.js';
import type { Warning } from '../../base/warning.js';
import type { HoleEdge, HoleShape } from '../geometry/hole-shape.js';
import type { HoleLaw } from './hole-law.js';
import { requireLaw } from './hole-law.js';
import type { HolePath } from './hole-path.js';
import { edgeDepth } from './hole-shape.js';
import { holeRangeWarnings, outside } from './range-warnings.js';

/** Where the law of each shape was compared with our own solutions (docs/hole-law.md). */
const checked = {
  straight: { law: 'edged hole', lengthRatio: { low: 0.5, high: 4 } },
  conical: { law: 'tapered hole', lengthRatio: { low: 0.6, high: 5 } },
  stepped: { law: 'stepped hole', lengthRatio: { low: 1, high: 4 } },
  slot: { law: 'slot', lengthRatio: { low: 1, high: 3 } },
} as const;

const reynoldsRange = { low: 0, high: 800 };
/** A slot was solved in three dimensions up to here. */
const slotReynoldsRange = { low: 0, high: 20 };

const degrees = (angle: number) => (180 / Math.PI) * angle;

function edgeWarnings(edge: HoleEdge | undefined, diameter: number): readonly (Warning | undefined)[] {
  if (edge === undefined) return [];
  const depth = edgeDepth(edge) / diameter;
  const depthRange = { low: 0, high: 0.3 };
  const { law } = checked.straight;
  return [
    outside('hole-edge-depth', 'Depth of an edge over hole diameter', depth, depthRange, law),
    edge.kind === 'chamfered'
      ? outside(
          'hole-edge-angle',
          'Half angle of a chamfer in degrees,',
          degrees(edge.halfAngle),
          // As typed in degrees, so that 30 and 60 themselves carry no warning.
          { low: 30 - 1e-9, high: 60 + 1e-9 },
          law,
        )
      : undefined,
  ];
}

function sizeWarnings(diameter: number, shape: HoleShape): readonly (Warning | undefined)[] {
  switch (shape.kind) {
    case 'straight':
      return [...edgeWarnings(shape.blindEdge, diameter), ...edgeWarnings(shape.shaftEdge, diameter)];
    case 'conical':
    case 'stepped': {
      const ratio = diameter / shape.shaftSideDiameter;
      const taper = shape.kind === 'conical';
      const what = taper ? 'Ratio of the two diameters of a taper' : 'Ratio of the two diameters of a step';
      const range = taper ? { low: 1, high: 1.5 } : { low: 1.15, high: 1.7 };
      const { law } = checked[shape.kind];
      return [outside(`hole-${taper ? 'taper' : 'step'}`, what, Math.max(ratio, 1 / ratio), range, law)];
    }
    case 'slot':
      return [];
  }
}

/**
 * Says where the holes of a path are outside what their law was checked for: the length and Reynolds number of each shape, and
 * its own sizes.
 *
 * @param path - bound holes
 * @param law - the law of straight sharp holes
 * @param reynoldsNumber - of the narrowest section
 * @example
 * ```ts
 * const oil = { density: 970, kinematicViscosity: 350e-6 };
 * const piston = { diameter: 0.0115, thickness: 0.0025, holes: [{ count: 4, diameter: 0.0013 }], eccentricity: 0 };
 * const [path] = pistonFlow(piston, 0.012, oil).paths;
 * path && holePathWarnings(path, sharpHoleLaw, 5000)[0]?.code; // 'hole-reynolds-number-high': checked to Reynolds 800
 * path && holePathWarnings(path, sharpHoleLaw, 100).length; // 0: within the range
 * ```
 * @public
 */
export function holePathWarnings(path: HolePath, law: HoleLaw, reynoldsNumber: number): readonly Warning[] {
  requireRecord(path, 'path');
  requireRecord(path.group, 'path.group');
  requireLaw(law);
  requireNotNegative(reynoldsNumber, 'reynoldsNumber', '');
  const { group, lengthRatio } = path;
  const { shape, diameter } = group;
  if (shape === undefined) return law.rangeWarnings(lengthRatio, reynoldsNumber);
  const range = {
    ...checked[shape.kind],
    reynoldsNumber: shape.kind === 'slot' ? slotReynoldsRange : reynoldsRange,
  };
  const sizes = sizeWarnings(diameter, shape).filter((warning) => warning !== undefined);
  return [...holeRangeWarnings(range, lengthRatio, reynoldsNumber), ...sizes];
}
