import type { MovingShock, Passage } from '../../lib/motion/shock/moving-shock.js';
import { monotoneRoot } from '../../lib/numeric/monotone-root.js';
import { type SampleChange, sampleShock } from './sample-shock.js';

/**
 * The law of holes and jets that the programs of the reference trajectories have, written out: an earlier fit than that of the library,
 * from which it differs by a few tenths of a percent. What is compared is motion, not the hole.
 */
const density = 970;
const diameter = 0.0017;
const lengthRatio = 0.0025 / diameter;
const area = 2 * (Math.PI / 4) * diameter ** 2;
const boreArea = (Math.PI / 4) * 0.012 ** 2;
const jetMomentum = 1.2;

function pressureDrop(speed: number, kinematicViscosity: number): number {
  const reynolds = (speed * diameter) / kinematicViscosity;
  const x = reynolds / 27;
  const laminar = reynolds / Math.sqrt(1 + (reynolds / 3000) ** 2);
  const bubble = 0.1 + laminar / 2000;
  const development = 1.25 / Math.sqrt(1 + ((1.25 / 13.76) ** 2 * laminar) / lengthRatio);
  const loss = 1 + development + 1.68 / (1 + lengthRatio / bubble) ** 2;
  const creeping = (density * kinematicViscosity * (0.99 * 6 * Math.PI + 32 * lengthRatio)) / diameter;
  return speed * (creeping + 0.5 * density * speed * loss * (x / Math.sqrt(1 + x / 4 + x * x)));
}

function passage(pressure: number, kinematicViscosity: number, gap: number, into: Passage): void {
  const target = Math.abs(pressure);
  const excess = (speed: number) => {
    const step = 1e-5 * speed;
    const [low, high] = [speed - step, speed + step].map((each) => pressureDrop(each, kinematicViscosity));
    return {
      value: pressureDrop(speed, kinematicViscosity) - target,
      slope: ((high ?? 0) - (low ?? 0)) / (2 * step),
    };
  };
  const creepingSpeed = target / (pressureDrop(1e-6, kinematicViscosity) / 1e-6);
  const speed =
    target === 0 ? 0 : monotoneRoot(excess, creepingSpeed, 0, 2 * creepingSpeed, 'hole speed').root;
  const flow = area * speed + gap * target;
  const recoil = density * area * speed * Math.max(jetMomentum * speed - flow / boreArea, 0);
  into.flow = Math.sign(pressure) * flow;
  into.recoil = Math.sign(pressure) * recoil;
}

/** The sample shock with the hole law of the reference trajectories. */
export function referenceShock(change: SampleChange = {}): MovingShock {
  const { kinematicViscosity = 3.8e-4 } = change;
  const height = (0.012 - 0.01194) / 2;
  const viscosity = density * kinematicViscosity;
  const gap = (Math.PI * (0.012 - height) * height ** 3) / (12 * viscosity * 0.0025);
  return {
    ...sampleShock(change),
    passage: (pressure, into) => passage(pressure, kinematicViscosity, gap, into),
  };
}
