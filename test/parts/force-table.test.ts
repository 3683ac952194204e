import { readFileSync } from 'node:fs';
import { Ajv } from 'ajv';
import { describe, expect, test } from 'vitest';
import schema from '../../docs/force-table.schema.json' with { type: 'json' };
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { createOil, fluidAt } from '../../lib/fluid/index.js';
import { readDynoFile } from '../../lib/measure/index.js';
import {
  assembleShock,
  forceTable,
  forceTableCsv,
  forceTableModelica,
  readParts,
} from '../../lib/parts/index.js';
import { combiTables } from './combi-tables.js';

const demo = new URL('../../notebooks/demo-parts.yaml', import.meta.url);
const [build] = readParts(readFileSync(demo, 'utf8'), 'demo-parts.yaml').builds;
if (build === undefined) throw new Error('the demo parts have a build');
const { damper } = assembleShock(build);
const oil = createOil(build.oil.definition);
const grid = { temperatures: [278.15, 313.15], fastest: 0.4, speedsEachWay: 4, positions: 3 };
const table = forceTable(damper, oil, grid);

/** Force asked for one place by itself [N]. */
const forceAt = (temperature: number, speed: number, position: number): number =>
  damperForce(damperModel(damper, fluidAt(oil, temperature)), { speed, position }).force;

describe('a table of forces', () => {
  test('runs through both directions and the whole stroke', () => {
    expect(table.speeds.map((speed) => Number(speed.toFixed(9)))).toEqual([
      -0.4, -0.3, -0.2, -0.1, 0, 0.1, 0.2, 0.3, 0.4,
    ]);
    expect(table.positions).toEqual([0, damper.stroke / 2, damper.stroke]);
  });

  test('holds the force of each place: rows are speeds, columns positions', () => {
    for (const { temperature, forces } of table.atTemperatures)
      for (const [row, speed] of table.speeds.entries())
        for (const [column, position] of table.positions.entries())
          expect(forces[row]?.[column]).toBe(forceAt(temperature, speed, position));
  });

  test('cold oil damps more, rebound pulls and compression pushes, and the gas pushes more the further in', () => {
    const [cold, warm] = table.atTemperatures;
    expect(cold?.dampingForces[8]?.[0]).toBeGreaterThan((warm?.dampingForces[8]?.[0] ?? 0) * 1.2);
    expect(cold?.dampingForces[0]?.[0]).toBeLessThan(0);
    expect(cold?.forces[4]?.[2]).toBeGreaterThan(cold?.forces[4]?.[0] ?? 0);
  });

  test('as JSON it follows its published schema, and one with a text for a number does not', () => {
    const follows = new Ajv({ strict: true }).compile(schema);
    expect(follows(JSON.parse(JSON.stringify(table)))).toBe(true);
    expect(follows({ ...table, speeds: ['0.1'] })).toBe(false);
    expect(follows({ ...table, more: 1 })).toBe(false);
  });

  test.each([
    [{ positions: 1 }, 'positions must be 2 to 1000'],
    [{ fastest: -1 }, 'fastest must be greater than 0 m/s'],
    [{ temperatures: [20] }, 'temperature must be 200 to 600 K'],
  ])('%o is refused', (change, message) => {
    expect(() => forceTable(damper, oil, { ...grid, ...change })).toThrow(message);
  });
});

describe('the same as text', () => {
  test('CSV has its units in the header and one force a line', () => {
    const lines = forceTableCsv(table).split('\r\n');
    expect(lines[0]).toBe(
      'temperature (°C),position (mm),speed (mm/s),force (N),damping force (N),cavitating',
    );
    expect(lines.length).toBe(1 + 2 * 9 * 3 + 1);
    const [celsius, millimetres, speed, force] = (lines[1 + 27 + 1] ?? '').split(',').map(Number);
    expect([celsius, speed]).toEqual([40, -400]);
    expect(millimetres).toBeCloseTo(500 * damper.stroke, 6);
    expect(force).toBeCloseTo(forceAt(313.15, -0.4, damper.stroke / 2), 3);
  });

  test('its columns of one temperature and position are read as a dyno file', () => {
    const [header, ...lines] = forceTableCsv(table).split('\r\n');
    const some = lines
      .filter((line) => line.startsWith('5,0,'))
      .map((line) => line.split(',').slice(2, 4).join(','));
    const record = readDynoFile([header?.split(',').slice(2, 4).join(','), ...some].join('\n'));
    expect(record.speed?.[0]).toBeCloseTo(-0.4, 9);
    expect(record.force[8]).toBeCloseTo(forceAt(278.15, 0.4, 0), 3);
  });

  test('the layout of CombiTable text files is read back: speed down, position across, one matrix a temperature', () => {
    const tables = combiTables(forceTableModelica(table));
    expect([...tables.keys()]).toEqual(['force_278_15', 'force_313_15']);
    const warm = tables.get('force_313_15') ?? [];
    expect(warm.map((row) => row.length)).toEqual(new Array(10).fill(4));
    expect(warm[0]?.slice(1)).toEqual(table.positions.map((position) => Number(position.toPrecision(6))));
    expect(warm[1]?.[0]).toBe(-0.4);
    expect(warm[9]?.[3]).toBeCloseTo(forceAt(313.15, 0.4, damper.stroke), 3);
    // Places of a table must rise strictly.
    for (let row = 2; row < warm.length; row++)
      expect(warm[row]?.[0]).toBeGreaterThan(warm[row - 1]?.[0] ?? 0);
  });
});
