import { describe, expect, it, test } from 'vitest';
import { requireShape } from '../../lib/base/shape.js';
import { likeColumn, tableShape } from '../../lib/plot/chart/table.js';
import { columnHeading, displayColumn, displayNumber } from '../../lib/plot/index.js';
import { QuantityError } from '../../lib/units/index.js';

const force = { label: 'Force', unit: 'N' };

describe('a column', () => {
  it('is headed by label and unit', () => {
    expect(columnHeading({ label: 'Shaft speed', unit: 'mm/s' })).toBe('Shaft speed, mm/s');
    expect(columnHeading({ label: 'Oil', unit: '' })).toBe('Oil');
  });

  it('converts from SI where it has a dimension, and only there', () => {
    expect(displayNumber({ label: 'Speed', unit: 'mm/s', dimension: 'speed' }, 0.25)).toBe(250);
    expect(displayNumber({ label: 'Temperature', unit: '°C', dimension: 'temperature' }, 293.15)).toBe(20);
    expect(displayNumber({ label: 'Price', unit: 'EUR' }, 7.9)).toBe(7.9);
    expect(() => displayNumber({ label: 'Speed', unit: 'knot', dimension: 'speed' }, 1)).toThrow(
      QuantityError,
    );
  });

  it('drops the digits that processors disagree on', () => {
    expect(displayNumber(force, 0.1 + 0.2)).toBe(0.3);
    expect(displayNumber(force, 1234.5678)).toBe(1234.57);
  });

  it('shows the same significant digits all the way down, or whole numbers', () => {
    expect(displayColumn(force, [1.1, 23.456, 0, -0.0123, null, 'none'])).toEqual([
      '1.10',
      '23.5',
      '0',
      '−0.0123',
      '',
      'none',
    ]);
    expect(displayColumn(force, [60, 1000, 4])).toEqual(['60', '1000', '4']);
    expect(displayColumn({ ...force, digits: 2 }, [1234.5, 1])).toEqual(['1200', '1']);
  });

  it('has a tenth where a number is under ten, and no more than twelve decimals', () => {
    expect(displayColumn({ ...force, digits: 1 }, [0.25, 8.4, 31])).toEqual(['0.3', '8', '30']);
    expect(displayColumn(force, [9.999, 99.95, 0.5])).toEqual(['10.0', '100', '0.500']);
    expect(displayColumn(force, [1.5e-12, 1])).toEqual(['0.000000000002', '1.00']);
    expect(displayColumn(force, ['a', null])).toEqual(['a', '']);
  });

  it('under another label keeps its unit, its dimension and its digits, and has none that it had not', () => {
    expect(
      likeColumn({ label: 'Speed', unit: 'mm/s', dimension: 'speed', digits: 2 }, 'at first'),
    ).toStrictEqual({
      label: 'at first',
      unit: 'mm/s',
      dimension: 'speed',
      digits: 2,
    });
    expect(likeColumn(force, 'at first')).toStrictEqual({ label: 'at first', unit: 'N' });
  });
});

test('a cell is a number, a text or nothing', () => {
  const take = (cell: unknown) => () =>
    requireShape({ table: { columns: [force], rows: [[cell]] } }, { table: tableShape });
  for (const cell of [1.5, 'a text', null]) expect(take(cell)).not.toThrow();
  for (const cell of [Number.NaN, true, {}, undefined]) expect(take(cell)).toThrow('table.rows[0][0]');
});
