import { madeWith, requireShape } from '../../base/shape.js';
import type { Dimension } from '../../units/index.js';
import { fromSi } from '../../units/quantity-text.js';
import { findUnit } from '../../units/unit-table.js';
import type { ForceTable } from './force-table.js';

/** Six significant digits: more than any oil is known to. */
const short = (value: number): string => String(Number(value.toPrecision(6)));

/** A value in SI, in a unit of the list. */
function shownIn(value: number, dimension: Dimension, name: string): string {
  const unit = findUnit(dimension, name);
  return short(unit === undefined ? value : fromSi(value, unit));
}

/**
 * A table of forces as CSV (RFC 4180), one force a line, units in the header.
 *
 * @param table - from {@link forceTable}
 * @public
 */
export function forceTableCsv(table: ForceTable): string {
  requireShape({ table }, { table: madeWith('atTemperatures') });
  const lines = table.atTemperatures.flatMap(({ temperature, forces, dampingForces, cavitating }) =>
    table.speeds.flatMap((speed, row) =>
      table.positions.map((position, column) =>
        [
          shownIn(temperature, 'temperature', '°C'),
          shownIn(position, 'length', 'mm'),
          shownIn(speed, 'speed', 'mm/s'),
          short(forces[row]?.[column] ?? 0),
          short(dampingForces[row]?.[column] ?? 0),
          cavitating[row]?.[column] === true ? 'yes' : 'no',
        ].join(','),
      ),
    ),
  );
  const header = 'temperature (°C),position (mm),speed (mm/s),force (N),damping force (N),cavitating';
  return `${[header, ...lines].join('\r\n')}\r\n`;
}

/**
 * A table of forces as a text file for `CombiTable2Ds` of the Modelica Standard Library: one matrix a temperature, named `force_` and the kelvins;
 * speed [m/s] down the first column, position [m] along the first row, force [N] where they meet.
 *
 * @param table - from {@link forceTable}
 * @see documentation of `Modelica.Blocks.Tables.CombiTable2Ds`, text files (from memory): `#1` first, then `double name(rows,columns)`
 * @public
 */
export function forceTableModelica(table: ForceTable): string {
  requireShape({ table }, { table: madeWith('atTemperatures') });
  const { speeds, positions } = table;
  const matrices = table.atTemperatures.map(({ temperature, forces }) => {
    const name = `force_${short(temperature).replace('.', '_')}`;
    const rows = speeds.map((speed, row) => [speed, ...(forces[row] ?? [])]);
    return [
      `# Force [N] at ${short(temperature)} K: speed [m/s] down, position from full extension [m] across; compression is positive`,
      `double ${name}(${speeds.length + 1},${positions.length + 1})`,
      ...[[0, ...positions], ...rows].map((row) => row.map(short).join(' ')),
    ].join('\n');
  });
  return `#1\n${matrices.join('\n')}\n`;
}
