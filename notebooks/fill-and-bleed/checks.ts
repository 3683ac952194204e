import { waitingTime } from '../../lib/fill/air/waiting-time.js';
import { chamberVolume } from '../../lib/fill/chamber/chamber.js';
import { closeShock } from '../../lib/fill/chamber/closed-shock.js';
import { chamberContents, lockPosition } from '../../lib/fill/chamber/pressure-inside.js';
import { staticForce } from '../../lib/fill/chamber/static-force.js';
import type { Block } from '../../lib/page/index.js';
import { duration, grams } from '../base/bench-wording.js';
import { type BuiltShock, riseSpeedIn } from '../build-sheet/built-shock.js';
import { deadBandAt, squeezing } from './air-figures.js';

const steps = 200;

/** Claims that the page tests on its own numbers. */
export function fillChecks(built: BuiltShock, temperature: number, speed: number): readonly Block[] {
  return [
    volumeCheck(built),
    energyCheck(built),
    closingCheck(built),
    waitCheck(built, temperature),
    ...airChecks(built, temperature, speed),
  ];
}

/** The stretch of stroke that the shaft can go, from fully out. */
function freeStroke({ shock }: BuiltShock): number {
  return Math.min(shock.chamber.stroke, 0.99 * lockPosition(shock));
}

function volumeCheck(built: BuiltShock): Block {
  const whole = chamberVolume(built.shock.chamber);
  const end = freeStroke(built);
  const worst = Math.max(
    ...Array.from({ length: steps + 1 }, (_, step) => {
      const { oil, gas, shaft, solid } = chamberContents(built.shock, (end * step) / steps);
      return Math.abs(oil + gas + shaft + solid - whole);
    }),
  );
  return {
    kind: 'check',
    claim: 'Oil, gas, shaft and solid parts fill the body at every place of the stroke',
    passed: worst <= 1e-12 * whole,
    detail: `off by at most ${(worst / whole).toExponential(0)} of it`,
  };
}

function energyCheck(built: BuiltShock): Block {
  const end = freeStroke(built);
  const work = (from: number, to: number): number => {
    let sum = 0;
    for (let step = 0; step <= steps; step++) {
      const weight = step === 0 || step === steps ? 1 : step % 2 === 1 ? 4 : 2;
      const position = Math.min(Math.max(from + ((to - from) * step) / steps, 0), end);
      sum += weight * staticForce(built.shock, position);
    }
    return (sum * (to - from)) / (3 * steps);
  };
  const [put, back] = [work(0, end), work(end, 0)];
  const scale = Math.abs(put) + built.shock.shaftArea * built.closing.ambientPressure * end;
  return {
    kind: 'check',
    claim: 'What a slow push puts into the gas, a slow pull gives back',
    passed: Math.abs(put + back) <= 1e-9 * scale,
    detail: `${(1e3 * put).toFixed(3)} mJ in, ${(-1e3 * back).toFixed(3)} mJ back`,
  };
}

function closingCheck({ shock }: BuiltShock): Block {
  const { stroke } = shock.chamber;
  const pushes = [0.5, 0.75, 1].map((part) =>
    staticForce(
      closeShock(shock.chamber, shock.compensator, { ...shock.closing, position: part * stroke }),
      stroke / 2,
    ),
  );
  const falling = pushes.every((push, index) => index === 0 || push < (pushes[index - 1] ?? 0));
  return {
    kind: 'check',
    claim: 'Closed with the shaft further in, the gas pushes less',
    passed: falling,
    detail: `at half stroke ${pushes.map(grams).join(', ')} for a cap closed 50, 75 and 100 % in`,
  };
}

function waitCheck(built: BuiltShock, temperature: number): Block {
  const riseSpeed = riseSpeedIn(built, temperature);
  const { length } = built.shock.chamber;
  const [small, large] = [waitingTime(0.1e-3, length, riseSpeed), waitingTime(0.2e-3, length, riseSpeed)];
  const ratio = small / large;
  return {
    kind: 'check',
    claim: 'A bubble of half the size needs about four times the wait',
    passed: ratio > 3.5 && ratio < 4.2,
    detail: `${duration(small)} for 0.2 mm, ${duration(large)} for 0.4 mm: ${ratio.toFixed(2)} times`,
  };
}

function airChecks(built: BuiltShock, temperature: number, speed: number): readonly Block[] {
  const travel = (air: number) => deadBandAt(built, temperature, air, squeezing(built) * speed);
  const [little, twice] = [travel(0.02), travel(0.04)];
  // Mixed through the oil, neither side of the piston is held, and there is no such travel.
  if (little === undefined || twice === undefined) return [];
  const ratio = twice / little;
  return [
    {
      kind: 'check',
      claim: 'Twice the air, twice the dead travel',
      passed: ratio > 1.85 && ratio < 2.05,
      detail: `${(1e3 * little).toFixed(3)} mm with 2 %, ${(1e3 * twice).toFixed(3)} mm with 4 %`,
    },
  ];
}
