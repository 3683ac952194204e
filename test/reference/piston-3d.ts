// A piston with four holes and a wide gap, solved in three dimensions and put against the model, by hand:
//   npm run reference-3d -- [--mesh 1.6] [--reynolds 0,10,60] [--rows rows.csv]
// Mesh 1.6 takes three minutes, 1 a quarter of an hour and 2 GB; Re 0 alone a minute. --rows prints the table of rows solved before.
// Needs the Debian packages freefem++ and libfreefem++ (msh3 and MUMPS_seq).

import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { parseArgs } from 'node:util';
import { bindDamper, oilForce } from '../../lib/damper/index.js';
import { sharpHoleLaw } from '../../lib/flow/hole/sharp-hole.js';
import { sealedGas } from '../../lib/gas/gas.js';

const { values } = parseArgs({
  options: {
    mesh: { type: 'string', default: '1.6' },
    reynolds: { type: 'string', default: '0,10,60' },
    rows: { type: 'string' },
  },
});

// Invented sizes in mm, with the speed 1 mm/s and the viscosity 1. The gap is several times a real one, so that it carries a sixth of
// the oil and a coarse mesh resolves it.
const boreRadius = 6;
const pistonRadius = 5.7;
const holeRadius = 0.8;
const pitchRadius = 3.2;
const thickness = 2.5;
const downstream = 16;

function model(density: number) {
  const damper = {
    bore: 2 * boreRadius,
    // Of no consequence: with the gas behind the shaft side the shaft takes nothing off the area.
    shaftDiameter: 1,
    stroke: 20,
    piston: {
      diameter: 2 * pistonRadius,
      thickness,
      holes: [{ count: 4, diameter: 2 * holeRadius, pitchDiameter: 2 * pitchRadius }],
      eccentricity: 0,
    },
    gas: sealedGas({
      volume: 1000,
      pressure: 1e5,
      polytropicExponent: 1,
      ambientPressure: 1e5,
      layout: 'shaft-side',
    }),
    seal: { kineticForce: 0, breakawayForce: 0 },
  } as const;
  const bound = bindDamper(damper, { density, kinematicViscosity: 1 / density });
  const force = oilForce(bound, 1);
  const { pressureDrop, holeSpeeds } = bound.pistonFlow.pressureDrop(bound.dampingArea);
  const holes = 4 * Math.PI * holeRadius ** 2 * (holeSpeeds[0] ?? 0);
  const flow = Math.PI * boreRadius ** 2;
  return {
    force,
    pressureDrop,
    holeSpeeds,
    density,
    holes,
    gap: flow - holes,
    area: bound.dampingArea,
    drag: bound.rimDrag,
  };
}

/** Creeping flow stands for density 0, which the model has no need of. */
const creepingDensity = 1e-6;

function solve(): string {
  const creepingSpeed = model(creepingDensity).holeSpeeds[0] ?? 0;
  const densities = values.reynolds
    .split(',')
    .map((reynolds) => Number(reynolds) / (creepingSpeed * 2 * holeRadius));
  const folder = mkdtempSync(join(tmpdir(), 'piston-3d-'));
  try {
    const [input, output] = [join(folder, 'case.txt'), join(folder, 'rows.csv')];
    const sizes = [boreRadius, pistonRadius, holeRadius, pitchRadius, thickness, downstream];
    writeFileSync(input, `${[...sizes, values.mesh, densities.length, ...densities].join(' ')}\n`);
    const script = fileURLToPath(new URL('piston-3d.edp', import.meta.url));
    const run = spawnSync('FreeFem++', ['-nw', '-v', '0', script, input, output], {
      stdio: ['ignore', 'inherit', 'inherit'],
      // Where Debian's libfreefem++ puts its plugins, which its own settings do not say.
      env: { FF_LOADPATH: '/usr/lib/freefem++', ...process.env },
    });
    if (run.status !== 0)
      throw new Error('FreeFem++ failed: it needs the Debian packages freefem++ and libfreefem++');
    return readFileSync(output, 'utf8');
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const [header = '', ...lines] = (values.rows ? readFileSync(values.rows, 'utf8') : solve())
  .trim()
  .split('\n');
const names = header.split(',');
for (const line of lines) {
  const cells = line.split(',').map(Number);
  const value = (name: string) => cells[names.indexOf(name)] ?? Number.NaN;
  const theirs = model(Math.max(value('density'), creepingDensity));
  const speed = value('holes') / (4 * Math.PI * holeRadius ** 2);
  const reynolds = value('density') * speed * 2 * holeRadius;
  const resistance = sharpHoleLaw.resistance(
    { diameter: 2 * holeRadius, length: thickness },
    { density: theirs.density, kinematicViscosity: 1 / theirs.density },
  );
  const drop = value('p_before') - value('p_face_behind');
  const balance = value('force') + value('wall_force') - Math.PI * boreRadius ** 2 * value('p_before');
  const rows: readonly (readonly [string, number, number])[] = [
    ['flow through the holes', value('holes'), theirs.holes],
    ['flow through the gap', value('gap'), theirs.gap],
    ['pressure drop to the face behind', drop, theirs.pressureDrop],
    ['  the hole law at the solved flow', drop, resistance.pressureDrop(speed)],
    ['face to face', value('p_face_before') - value('p_face_behind'), theirs.pressureDrop],
    ['far to far', value('p_before') - value('p_behind'), (theirs.force - theirs.drag) / theirs.area],
    ['force on the piston', value('force'), theirs.force],
  ];
  console.log(
    `\nRe ${reynolds.toFixed(1)}, ${value('unknowns')} unknowns, balance of momentum off by ${balance.toFixed(0)}, jet momentum ${value('jet_momentum').toFixed(3)}`,
  );
  for (const [name, solved, computed] of rows) {
    const error = (100 * (computed / solved - 1)).toFixed(2);
    console.log(
      `${name.padEnd(34)}${solved.toFixed(2).padStart(12)}${computed.toFixed(2).padStart(12)}${error.padStart(9)} %`,
    );
  }
}
