import { type Bottle, fillState } from '../../lib/decisions/day/fill-choice.js';
import { blendPlan } from '../../lib/decisions/match/blend-plan.js';
import type { Block } from '../../lib/page/blocks/block.js';
import { percent } from '../base/wording.js';

/** A blend to measure out, with its viscosity by the default rule and at the ends of all rules, as parts of it. */
export interface Mix {
  readonly recipe: string;
  readonly low: number;
  readonly high: number;
  readonly typical: number;
}

/** The blend of the two nearest bottles of one kind around a viscosity. */
export function mixed(
  bottles: readonly Bottle[],
  wanted: number,
  at: number,
  volume: number,
): Mix | undefined {
  const known = bottles.map((bottle, first) => ({
    bottle,
    viscosity: fillState(bottles, { first, secondShare: 0 }, at).typical,
  }));
  const silicones = known
    .filter(({ bottle }) => bottle.oil.base === 'silicone')
    .sort((a, b) => a.viscosity - b.viscosity);
  const thin = silicones.findLast(({ viscosity }) => viscosity <= wanted);
  const thick = silicones.find(({ viscosity }) => viscosity > wanted);
  if (thin === undefined || thick === undefined) return undefined;
  const pair = { first: thin.bottle.oil, second: thick.bottle.oil };
  const plan = blendPlan({ pair, temperature: at }, wanted, volume);
  const millilitres = (amount: number): string => (1e6 * amount).toFixed(1);
  return {
    recipe: `${millilitres(plan.firstVolume)} ml of ${thin.bottle.name} with ${millilitres(plan.secondVolume)} ml of ${thick.bottle.name}`,
    low: plan.low / plan.typical,
    high: plan.high / plan.typical,
    typical: plan.typical,
  };
}

export function mixText({ recipe, low, high }: Mix): Block {
  return {
    kind: 'text',
    text:
      high / low < 1.01
        ? `The blend: ${recipe}. The rules for blends agree on it within 1 %.`
        : `The blend: ${recipe}. The rules for blends differ: the true viscosity may lie ${percent(1 - low)} below to ${percent(high - 1)} above.`,
  };
}
