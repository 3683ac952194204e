/** The shock of the readme. */
const shock = `{
    bore: 0.012, shaftDiameter: 0.003, stroke: 0.028, gas: sealedGas({ volume: 1e-6 }), seal: { kineticForce: 0.4, breakawayForce: 0.6 },
    piston: { diameter: 0.01195, thickness: 0.0025, holes: [{ count: 4, diameter: 0.0013 }], eccentricity: 0 },
}`;

/** Draws the forces of a build that is off within its tolerances in a thread of its own and in this one. */
export const spreadTwice = `import { createOil, sealedGas } from 'dashpot';
import { finish, forceSpread } from 'dashpot/decisions';
import { startDecisionWorkers } from 'dashpot/workers';
const point = { temperature: 298.15, kinematicViscosity: 350e-6 };
const build = {
  damper: ${shock},
  oil: createOil({ base: 'silicone', viscosity: { kind: 'silicone', point } }),
  temperature: 298.15, position: 0.0125, speeds: [-0.1],
  tolerances: { holeDiameter: { kind: 'normal', standardDeviation: 2e-5 } },
};
const drawing = { count: 64, seed: 1, sampling: 'random' };
const workers = startDecisionWorkers(1);
const [[there], [here]] = [await workers.forceSpread(build, drawing), finish(forceSpread(build, drawing))];
await workers.close();
console.log(here.high > here.low, JSON.stringify(there) === JSON.stringify(here));`;

/** Renders the notebook of the documentation, and then without a parts file. */
export const renderedTwice = `import { readFileSync } from 'node:fs';
import { renderNotebookFile } from 'dashpot/render';
const made = await renderNotebookFile('my-notebook.ts', { parts: readFileSync('node_modules/dashpot/notebooks/demo-parts.yaml', 'utf8'), settings: { temperature: '20 °C' } });
console.log(made.page.answer, made.isLive, made.html.includes('class="program"'), made.files.has('damping.svg'));
await renderNotebookFile('my-notebook.ts', { parts: 5 }).catch((error) => console.log(error.name, error.message));`;

/** With the core as `all`: the middle line of the example of the readme. */
export const forceOfAll = `const { createOil, damperForce, damperModel, fluidAt, sealedGas } = globalThis.all;
const point = { temperature: 298.15, kinematicViscosity: 350e-6 };
const oil = createOil({ base: 'silicone', viscosity: { kind: 'silicone', point } });
const model = damperModel(${shock}, fluidAt(oil, 293.15));
console.log(damperForce(model, { speed: -0.3, position: 0.014 }).dampingForce.toFixed(1));`;
