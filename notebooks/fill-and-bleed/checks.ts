import { standardGravity } from '../../lib/base/constants.js';
import { waitingTime } from '../../lib/fill/air/waiting-time.js';
import { chamberVolume } from '../../lib/fill/chamber/chamber.js';
import { chamberContents, lockPosition } from '../../lib/fill/chamber/pressure-inside.js';
import { staticForce } from '../../lib/fill/chamber/static-force.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import type { Block } from '../../lib/page/index.js';
import { duration } from '../base/bench-wording.js';
import { type BuiltShock, riseSpeedIn } from '../build-sheet/built-shock.js';

const steps = 1000;
const ifFailed = 'Do not build after this page; report it with the parts file';

/** Claims that the page tests against something that it did not use, and one against itself. */
export function fillChecks(built: BuiltShock, temperature: number): readonly Block[] {
  return [volumeCheck(built), ...workChecks(built), ...stokesCheck(built, temperature)];
}

/** The stretch of stroke that the shaft can go, from fully out. */
function freeStroke({ shock }: BuiltShock): number {
  return Math.max(Math.min(shock.chamber.stroke, 0.99 * lockPosition(shock)), 0);
}

function volumeCheck(built: BuiltShock): Block {
  const whole = chamberVolume(built.shock.chamber);
  const end = freeStroke(built);
  const worst = Math.max(
    ...Array.from({ length: steps + 1 }, (_, step) => {
      const { oil, gas, shaft, solid } = chamberContents(built.shock, Math.min((end * step) / steps, end));
      return Math.abs(oil + gas + shaft + solid - whole);
    }),
  );
  return {
    kind: 'check',
    claim: 'Oil, gas, shaft and solid parts fill the body at every place of the stroke',
    passed: worst <= 1e-12 * whole,
    detail: `off by at most ${(worst / whole).toExponential(0)} of it`,
    ifFailed,
    consistency: true,
  };
}

/** Work of a slow stroke, added up force by force, against p V ln of the ratio of volumes; where soft walls hold the gas, and no cavity opens. */
function workChecks(built: BuiltShock): readonly Block[] {
  const { shock, closing } = built;
  const [room, other] = shock.gas.rooms;
  if (room === undefined || other !== undefined || room.stiffness > 0 || room.vented) return [];
  const end = freeStroke(built);
  let sum = 0;
  for (let step = 0; step <= steps; step++) {
    const weight = step === 0 || step === steps ? 1 : step % 2 === 1 ? 4 : 2;
    sum += weight * staticForce(shock, Math.min((end * step) / steps, end));
  }
  const added = (sum * end) / (3 * steps);
  const out = room.volume + shock.shaftArea * closing.position;
  const inward = out - shock.shaftArea * end;
  const pressure = closing.ambientPressure;
  const byLaw = pressure * (room.volume * Math.log(out / inward) - shock.shaftArea * end);
  const scale = pressure * shock.shaftArea * end;
  return [
    {
      kind: 'check',
      claim:
        'The pushes along a slow stroke add up to the work of an isothermal gas, p V ln(V₁/V₂) (Çengel & Boles, from memory)',
      passed: Math.abs(added - byLaw) <= 1e-5 * scale,
      detail: `${(1e3 * added).toFixed(4)} mJ added up, ${(1e3 * byLaw).toFixed(4)} mJ by the law`,
      ifFailed,
    },
  ];
}

/** The wait for a small bubble against Stokes in endless oil; the walls of the bore slow it by 2.1 times its diameter over that of the bore. */
function stokesCheck(built: BuiltShock, temperature: number): readonly Block[] {
  const radius = 0.05e-3;
  const { density, kinematicViscosity } = fluidAt(built.oil, temperature);
  const { length, bore } = built.shock.chamber;
  const wait = waitingTime(radius, length, riseSpeedIn(built, temperature));
  const stokes = (4.5 * kinematicViscosity * length) / (standardGravity * radius ** 2);
  const walls = 2.2 * ((2 * radius) / bore);
  // Oseen: inertia of the oil adds 3/16 of the Reynolds number to the drag. Above 0.03 the drag of Schiller & Naumann lies more than 1 % above that, and Stokes is not asked.
  const reynolds = (2 * radius * (length / stokes)) / kinematicViscosity;
  if (reynolds > 0.03) return [];
  return [
    {
      kind: 'check',
      claim:
        'A bubble of 0.1 mm rises as Stokes’ law has it, slowed by the walls alone (density of the air left out)',
      passed: Math.abs(wait / stokes - 1) <= walls + 0.01 + (3 / 16) * reynolds,
      detail: `${duration(wait)} to the cap, ${duration(stokes)} by Stokes of ${density.toFixed(0)} kg/m³`,
      ifFailed,
    },
  ];
}
