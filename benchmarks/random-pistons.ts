// Solves random pistons, both ways, and counts failures: npm run bench random-pistons, or npx tsx benchmarks/random-pistons.ts 1000000
import { damperForce } from '../lib/damper/damper-force.js';
import { damperModel } from '../lib/damper/damper-model.js';
import { randomDamper, randomNumbers } from '../test/laws/random-damper.js';

const count = Number(process.argv[2] ?? 20_000);
const next = randomNumbers(20_261_125);
let failures = 0;
let mostSteps = 0;
let worstResidual = 0;
const start = performance.now();
for (let index = 0; index < count; index++) {
  const { damper, fluid, speed } = randomDamper(next);
  try {
    const model = damperModel(damper, fluid);
    for (const v of [speed, -speed]) {
      const point = damperForce(model, { speed: v, position: 0 });
      mostSteps = Math.max(mostSteps, point.iterations);
      worstResidual = Math.max(worstResidual, Math.abs(point.residual / (model.dampingArea * v)));
      if (!(point.dampingForce * v > 0 && Number.isFinite(point.force)))
        throw new Error(`force ${point.force}`);
    }
  } catch (error) {
    failures += 1;
    if (failures <= 5) console.error(JSON.stringify({ damper, fluid, speed }), String(error));
  }
}
const seconds = (performance.now() - start) / 1000;
console.log(`pistons           ${count}`);
console.log(`failures          ${failures}`);
console.log(`most solver steps ${mostSteps}`);
console.log(`largest residual  ${worstResidual.toExponential(1)} of the flow`);
console.log(`time              ${seconds.toFixed(0)} s`);
process.exitCode = failures === 0 ? 0 : 1;
