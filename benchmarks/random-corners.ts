// Follows random corners for 0.3 s each and counts failures by name: npm run bench random-corners, or npx tsx
// benchmarks/random-corners.ts 100000; a seed and the first corner may follow, so that they can be run in pieces
import { randomNumbers } from '../test/laws/random-damper.js';
import { isNamed, notFinite, runRandomCorner } from '../test/motion/random-corner.js';

const count = Number(process.argv[2] ?? 2000);
const seed = Number(process.argv[3] ?? 20_261_125);
const first = Number(process.argv[4] ?? 0);
const names = new Map<string, number>();
let unnamed = 0;
let notNumbers = 0;
let mostSteps = 0;
let allSteps = 0;
const start = performance.now();
for (let index = first; index < first + count; index++) {
  // A seed each, so that one case can be repeated alone.
  const next = randomNumbers(seed + 7919 * index);
  for (let i = 0; i < 8; i++) next();
  try {
    const outcome = runRandomCorner(next, 0.3);
    mostSteps = Math.max(mostSteps, outcome.steps);
    allSteps += outcome.steps;
    const bad = notFinite(outcome);
    if (bad.length > 0) {
      notNumbers += 1;
      if (notNumbers <= 3) console.error(`case ${index}: ${bad.slice(0, 3).join(', ')}`);
    }
  } catch (error) {
    const name = error instanceof Error ? error.name : 'no error';
    names.set(name, (names.get(name) ?? 0) + 1);
    if (!isNamed(error)) unnamed += 1;
    const seen = names.get(name) ?? 0;
    if (name !== 'InputError' && seen <= 3) console.error(`case ${index}: ${String(error).slice(0, 240)}`);
  }
}
console.log(`corners             ${count}`);
console.log(`not finite          ${notNumbers}`);
console.log(
  `failures            ${[...names].map(([name, times]) => `${name} ${times}`).join(', ') || 'none'}`,
);
console.log(`without a name      ${unnamed}`);
console.log(`most steps          ${mostSteps}`);
console.log(`mean steps          ${Math.round(allSteps / count)}`);
console.log(`milliseconds each   ${((performance.now() - start) / count).toFixed(1)}`);
