import { createOil } from '../../lib/index.js';
import * as parts from '../../lib/parts/index.js';
import { smallFile } from '../parts/small-file.js';
import { type GoodCalls, whole } from './good-call.js';

const build = whole(parts.readParts(smallFile).builds[0] as parts.Build);

const { damper } = parts.assembleShock(build);
const oil = whole(createOil(build.oil.definition));
const grid = { temperatures: [293.15], fastest: 0.3, speedsEachWay: 2, positions: 2 };
const table = whole(parts.forceTable(damper, oil, grid));

/** Calls of the entry of parts files. A part is what `readParts` made. */
export const partsCalls: GoodCalls = {
  assembleShock: [[build, { closeAt: 0.002, freeAir: 1e-8, temperature: 293.15 }]],
  benchSteps: [['seal']],
  damperForAnyOil: [[build]],
  forceTable: [[whole(damper), oil, grid]],
  forceTableCsv: [[table]],
  forceTableModelica: [[table]],
  lengthsOf: [[whole(build.shock), whole(build.piston)]],
  nearNames: [['thin', ['thin', 'thick']]],
  partsJsonSchema: [[]],
  readDay: [['time,temperature\n10:00,20 °C\n11:00,22 °C\n', 'day.csv']],
  readParts: [[smallFile, 'parts.yaml']],
  readShock: [[smallFile, build.name]],
};
