// Makes reference rows for one hole: npm run reference -- --diameter "1.3 mm" --length "2.5 mm" [--bore "12 mm"] [--holes 4]
//   [--reynolds 0.1,10,30,100,300] [--mesh 1.4] [--chamfer "0.1 mm"] [--round "0.1 mm"] [--shaft-side-diameter "1.7 mm"] [--turned]
import { parseArgs } from 'node:util';
import type { HoleShape } from '../../lib/flow/geometry/hole-shape.js';
import { shapedHoleResistance } from '../../lib/flow/hole/shaped-hole.js';
import { parseQuantity } from '../../lib/units/index.js';
import { holeWall, turnedRound } from './hole-wall.js';
import { solveHole } from './solve-hole.js';

const { values } = parseArgs({
  options: {
    diameter: { type: 'string', default: '1.3 mm' },
    length: { type: 'string', default: '2.5 mm' },
    bore: { type: 'string', default: '12 mm' },
    holes: { type: 'string', default: '4' },
    reynolds: { type: 'string', default: '0.1,10,30,100,300' },
    mesh: { type: 'string', default: '1.4' },
    chamfer: { type: 'string' },
    round: { type: 'string' },
    'shaft-side-diameter': { type: 'string' },
    turned: { type: 'boolean', default: false },
  },
});
const length = (text: string) => parseQuantity(text, 'length');
const diameter = length(values.diameter);
const thickness = length(values.length);

function shape(): HoleShape {
  const cone = values['shaft-side-diameter'];
  if (cone !== undefined) return { kind: 'conical', shaftSideDiameter: length(cone) };
  if (values.chamfer !== undefined) {
    return {
      kind: 'straight',
      blindEdge: { kind: 'chamfered', depth: length(values.chamfer), halfAngle: Math.PI / 4 },
    };
  }
  if (values.round !== undefined) {
    return { kind: 'straight', blindEdge: { kind: 'rounded', radius: length(values.round) } };
  }
  return { kind: 'straight' };
}

const wall = holeWall(diameter, thickness, shape());
const throat = values['shaft-side-diameter']
  ? Math.min(diameter, length(values['shaft-side-diameter']))
  : diameter;
const rows = solveHole({
  wall: values.turned ? turnedRound(wall) : wall,
  // Each hole has its share of the bore, as a round cell.
  boreRadius: length(values.bore) / throat / 2 / Math.sqrt(Number(values.holes)),
  reynoldsNumbers: values.reynolds.split(',').map(Number),
  meshFactor: Number(values.mesh),
});

console.log('reynolds,euler_face,euler_force,euler_law,law_error_percent,cells');
for (const { reynoldsNumber, eulerFace, eulerForce, cells } of rows) {
  const speed = values.turned ? -1 : 1;
  const fluid = { density: 2, kinematicViscosity: throat / reynoldsNumber };
  const law = Math.abs(shapedHoleResistance(diameter, shape(), thickness, fluid).pressureDrop(speed));
  const error = (100 * (law / eulerFace - 1)).toFixed(2);
  console.log(
    [reynoldsNumber, eulerFace.toFixed(4), eulerForce.toFixed(4), law.toFixed(4), error, cells].join(','),
  );
}
