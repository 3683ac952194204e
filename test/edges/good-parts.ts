import * as parts from '../../lib/parts/index.js';
import { smallFile } from '../parts/small-file.js';
import { type GoodCalls, whole } from './good-call.js';

const build = whole(parts.readParts(smallFile).builds[0] as parts.Build);

/** Calls of the entry of parts files. A part is what `readParts` made. */
export const partsCalls: GoodCalls = {
  assembleShock: [[build, { closeAt: 0.002, freeAir: 1e-8, temperature: 293.15 }]],
  benchSteps: [['seal']],
  damperForAnyOil: [[build]],
  lengthsOf: [[whole(build.shock), whole(build.piston)]],
  nearNames: [['thin', ['thin', 'thick']]],
  partsJsonSchema: [[]],
  readDay: [['time,temperature\n10:00,20 °C\n11:00,22 °C\n', 'day.csv']],
  readParts: [[smallFile, 'parts.yaml']],
};
