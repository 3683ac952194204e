// Errors of the hole laws against the numerical reference, in percent: npm run bench hole-reference

import type { HoleShape } from '../lib/flow/geometry/hole-shape.js';
import type { HoleLaw } from '../lib/flow/hole/hole-law.js';
import { lichtarowiczLaw } from '../lib/flow/hole/lichtarowicz.js';
import { oneConstantHoleLaw } from '../lib/flow/hole/one-constant-hole.js';
import { shapedHoleResistance } from '../lib/flow/hole/shaped-hole.js';
import { sharpHoleLaw } from '../lib/flow/hole/sharp-hole.js';
import heldOut from '../test/reference/held-out-rows.json' with { type: 'json' };
import { holeReferenceRows } from '../test/reference/hole-reference.js';
import shapes from '../test/reference/shape-rows.json' with { type: 'json' };

const fluid = (reynoldsNumber: number) => ({ density: 2, kinematicViscosity: 1 / reynoldsNumber });
const percent = (value: number, expected: number) => ((value / expected - 1) * 100).toFixed(2).padStart(7);

function eulerNumber(law: HoleLaw, lengthRatio: number, reynoldsNumber: number): number {
  return law.resistance({ diameter: 1, length: lengthRatio }, fluid(reynoldsNumber)).pressureDrop(1);
}

const laws = [sharpHoleLaw, oneConstantHoleLaw, lichtarowiczLaw];
console.log(`   L/d      Re  ${laws.map(({ name }) => name.padStart(18)).join('')}`);
const worst = laws.map(() => [0, 0]);
for (const { lengthRatio, reynoldsNumber, eulerNumber: expected } of holeReferenceRows()) {
  const errors = laws.map((law) => percent(eulerNumber(law, lengthRatio, reynoldsNumber), expected));
  for (const [index, error] of errors.entries()) {
    const range = reynoldsNumber <= 30 ? 0 : 1;
    const row = worst[index];
    if (row) row[range] = Math.max(row[range] ?? 0, Math.abs(Number(error)));
  }
  const cells = errors.map((error) => error.padStart(18)).join('');
  console.log(`${lengthRatio.toFixed(2).padStart(6)} ${String(reynoldsNumber).padStart(7)}  ${cells}`);
}
for (const [index, { name }] of laws.entries()) {
  console.log(`${name}: at most ${worst[index]?.[0]} % for Re up to 30, ${worst[index]?.[1]} % above`);
}
console.log('\nholes that the law was not fitted to, default law');
for (const { lengthRatio, areaRatio, points } of heldOut) {
  const errors = points.map(
    ([re = 0, face = 0]) => `${re}:${percent(eulerNumber(sharpHoleLaw, lengthRatio, re), face)}`,
  );
  console.log(`L/d ${lengthRatio}, area ratio ${areaRatio}   ${errors.join('  ')}`);
}
console.log('\nshapes');
for (const { name, diameter, length, shape, points } of shapes) {
  const errors = points.map(([re = 0, face = 0]) => {
    const law = shapedHoleResistance(diameter, shape as HoleShape, length, fluid(re));
    return `${re}:${percent(law.pressureDrop(1), face)}`;
  });
  console.log(`${name.padEnd(34)} ${errors.join('  ')}`);
}
