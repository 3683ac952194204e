import type { Build, OilPart } from '../../lib/parts/index.js';
import { modelsOf } from '../base/chosen-shock.js';
import { pointAt } from '../base/oil-forces.js';

/** The temperatures and shaft speeds that the page looks at. */
export interface Conditions {
  readonly temperature: number;
  readonly coldest: number;
  readonly hottest: number;
  readonly slow: number;
  readonly middle: number;
  readonly fast: number;
}

/** An oil in the shock of the page. */
export interface OilInShock {
  readonly name: string;
  readonly build: Build;
}

/** A force with the range that the label of the oil leaves open [N, positive]. */
export interface HoldBack {
  readonly typical: number;
  readonly low: number;
  readonly high: number;
}

export function oilsInShock(build: Build, oils: readonly OilPart[]): readonly OilInShock[] {
  return oils.map((oil) => ({ name: oil.name, build: { ...build, oil } }));
}

/** Rebound damping at a speed and a temperature [N, positive]. */
export function holdsBack({ build }: OilInShock, temperature: number, speed: number): HoldBack {
  const { model, bounds = [] } = modelsOf(build, temperature);
  const [typical = 0, ...ends] = [model, ...bounds].map((one) => -pointAt(one, -speed).dampingForce);
  return { typical, low: Math.min(typical, ...ends), high: Math.max(typical, ...ends) };
}
