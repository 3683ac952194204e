import { expect, test } from 'vitest';
import { textRow } from '../../lib/plot/chart/layout.js';

test('a text that is bold is heavier and no smaller than one that is not; it stands where it is put', () => {
  const place = { left: 3, top: 7, text: 'Force' };
  const [bold, plain] = [textRow({ ...place, bold: true }), textRow(place)];
  expect([bold['weight'], plain['weight']]).toEqual([600, 400]);
  expect(Number(bold['size'])).toBeGreaterThan(Number(plain['size']));
  expect(plain).toMatchObject({ left: 3, top: 7, text: 'Force', align: 'left' });
  expect(textRow({ ...place, bold: false })).toEqual(plain);
});
