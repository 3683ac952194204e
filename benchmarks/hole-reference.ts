// Errors of the hole laws against the numerical reference, in percent: npm run bench hole-reference

import type { HoleLaw } from '../lib/flow/hole/hole-law.js';
import { lichtarowiczLaw } from '../lib/flow/hole/lichtarowicz.js';
import { oneConstantHoleLaw } from '../lib/flow/hole/one-constant-hole.js';
import { sharpHoleLaw } from '../lib/flow/hole/sharp-hole.js';
import { holeReferenceRows } from '../test/reference/hole-reference.js';
import { lawOf } from '../test/reference/shape-law.js';
import { fittedShapes, heldOutShapes } from '../test/reference/shape-reference.js';

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
for (const [name, shapes] of [
  ['held out', heldOutShapes],
  ['fitted', fittedShapes],
] as const) {
  console.log(
    `\n${name}: errors of pressure drop and, behind the stroke, of the recoil in parts of the force`,
  );
  for (const hole of shapes) {
    const errors = hole.points.map(({ reynoldsNumber, euler, force, jetInside }) => {
      const { euler: drop, recoil } = lawOf(hole, reynoldsNumber);
      return `${reynoldsNumber}${jetInside ? '*' : ''}:${percent(drop, euler)}/${percent(euler - recoil, force).trim()}`;
    });
    console.log(`${hole.name.padEnd(28)} ${errors.join('  ')}`);
  }
}
