import { InputError } from '../../lib/base/input-error.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { sealedGas } from '../../lib/gas/gas.js';
import type { Corner } from '../../lib/motion/corner/corner.js';
import type { CornerOutcome } from '../../lib/motion/corner/corner-outcome.js';
import type { CornerEvent } from '../../lib/motion/corner/ground.js';
import { moveCorner } from '../../lib/motion/corner/move-corner.js';
import { movingShock } from '../../lib/motion/shock/bind-moving-shock.js';
import { IntegrationError } from '../../lib/numeric/integrator/integration-error.js';
import { ConvergenceError } from '../../lib/numeric/root-finding.js';

type Next = () => number;
const within = (next: Next, low: number, high: number) => low + next() * (high - low);
const decades = (next: Next, low: number, high: number) => low * (high / low) ** next();
const pick = <T>(next: Next, all: readonly T[]): T => all[Math.floor(next() * all.length)] as T;

function randomEvent(next: Next): CornerEvent {
  const height = within(next, -0.02, 0.04);
  switch (pick(next, ['landing', 'step', 'bump', 'washboard', 'table'])) {
    case 'step':
      return { kind: 'step', height };
    case 'bump':
      return { kind: 'bump', height, length: within(next, 0.02, 0.5), speed: within(next, 1, 12) };
    case 'washboard':
      return { kind: 'washboard', height: within(next, 0.001, 0.02), frequency: within(next, 1, 60) };
    case 'table':
      return {
        kind: 'table',
        times: [0, 0.05, 0.08, 0.2].map((time) => time * within(next, 0.99, 1.01)),
        heights: [0, height, 0.3 * height, 0],
      };
    default:
      return { kind: 'landing', dropHeight: within(next, 0, 1.2) };
  }
}

/** What a random corner is asked for in place of chance. */
interface Asked {
  readonly event?: CornerEvent;
  readonly until?: 'deepest' | 'touched';
}

/** Follows a corner of random parts: anything that a box of parts and a hand could put together, and a little beyond. */
export function runRandomCorner(next: Next, duration: number, { event, until }: Asked = {}): CornerOutcome {
  const bore = within(next, 0.01, 0.016);
  const shaftDiameter = within(next, 0.0025, 0.004);
  const stroke = within(next, 0.015, 0.035);
  const shaftVolume = (Math.PI / 4) * shaftDiameter ** 2 * stroke;
  const layout = pick(next, ['blind-side', 'shaft-side', 'emulsion'] as const);
  const room = (Math.PI / 4) * bore ** 2 * stroke;
  const gasVolume = shaftVolume * within(next, 1.1, 8);
  const emulsion = layout === 'emulsion';
  const kinetic = decades(next, 0.02, 2);
  const model = damperModel(
    {
      bore,
      shaftDiameter,
      stroke,
      piston: {
        diameter: bore - decades(next, 2e-5, 2e-4),
        thickness: within(next, 0.001, 0.004),
        holes: [{ count: Math.floor(within(next, 1, 9)), diameter: within(next, 0.0008, 0.0019) }],
        eccentricity: within(next, 0, 0.9),
      },
      gas: sealedGas({
        volume: gasVolume,
        pressure: decades(next, 6e4, 4e5),
        polytropicExponent: within(next, 1, 1.4),
        ambientPressure: 101_325,
        layout,
        airReleasePressure: emulsion ? 0 : pick(next, [0, 0, 5000, 20_000]),
      }),
      seal: { kineticForce: kinetic, breakawayForce: kinetic * within(next, 1, 2) },
    },
    { density: within(next, 930, 980), kinematicViscosity: decades(next, 5e-5, 3e-3) },
  );
  const farVolume = layout === 'shaft-side' ? room * within(next, 1.05, 1.6) : within(next, 0.1, 1) * 4e-7;
  const oilVolume =
    layout === 'shaft-side'
      ? farVolume + within(next, 0.1, 1) * 6e-7
      : farVolume + room * within(next, 1.05, 1.5);
  const shock = movingShock(model, {
    volume: emulsion ? oilVolume + gasVolume : oilVolume,
    farVolume,
    bulkModulus: within(next, 6e8, 1.8e9),
    airFraction: pick(next, [0, 0, 0.002, 0.02, 0.1]),
    airExponent: within(next, 1, 1.4),
  });
  const corner: Corner = {
    sprungMass: within(next, 0.1, 1.2),
    wheelMass: within(next, 0.03, 0.2),
    motionRatio: within(next, 0.4, 1.1),
    springRate: within(next, 150, 2500),
    springPreload: within(next, 0, 0.01),
    tyre: { stiffness: decades(next, 1000, 20_000), damping: pick(next, [0, 1, 2, 10]) },
    bumpStop: {
      from: stroke * within(next, 0.6, 1),
      stiffness: decades(next, 1e4, 3e5),
      damping: pick(next, [0, 5, 20]),
      progression: pick(next, [0, 1e9]),
    },
    droopStop: { stiffness: decades(next, 1e4, 3e5), damping: pick(next, [0, 5, 20]) },
    clearance: within(next, 0.005, 0.05),
  };
  const bristles = {
    kineticForce: kinetic,
    breakawayForce: 1.4 * kinetic,
    stribeckSpeed: 0.01,
    stiffness: kinetic / within(next, 1e-5, 5e-5),
    damping: 0.5,
    viscous: 0,
  };
  const sticks = next() < 0.2;
  const happens = randomEvent(next);
  return moveCorner(shock, corner, event ?? happens, {
    duration,
    ...(until && { until }),
    parts: 50,
    ...(sticks ? { bristles } : {}),
  });
}

/** Whether a failure is one with a name, and time and state or field and value. */
export function isNamed(error: unknown): boolean {
  if (error instanceof InputError) return true;
  if (error instanceof ConvergenceError) return true;
  return error instanceof IntegrationError && Number.isFinite(error.time) && error.state.length > 0;
}

/** Numbers of an outcome that are not finite. */
export function notFinite(outcome: CornerOutcome): readonly string[] {
  const bad: string[] = [];
  const visit = (value: unknown, path: string): void => {
    if (typeof value === 'number') {
      if (!Number.isFinite(value)) bad.push(path);
    } else if (ArrayBuffer.isView(value) || Array.isArray(value)) {
      (Array.from(value as ArrayLike<unknown>) as unknown[]).forEach((each, i) => {
        visit(each, `${path}[${i}]`);
      });
    } else if (typeof value === 'object' && value !== null) {
      for (const [name, each] of Object.entries(value)) visit(each, `${path}.${name}`);
    }
  };
  visit(outcome, 'outcome');
  return bad;
}
