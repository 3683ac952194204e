import { type Build, type OilPart, type Parts, readParts } from '../../lib/parts/index.js';
import { fileTexts } from './answers.js';
import type { Car } from './brute-landing.js';

/** The setting that asks for the landing instead of the curve. */
export const back = { back: 'same landing' } as const;
/** The middle of what is guessed of a car. */
export const likely: Car = { mass: 0.45, ratio: 0.7 };

/** The smallest file with what a landing needs: a bottle with its size, a spring, a car. */
export const third = readParts(
  `${fileTexts.smallest}
springs: [{ name: soft, rate: 0.55 N/mm, free-length: 42 mm }]
builds:
  - name: only
    shock: front
    piston: three holes
    oil: bottle 450
    spring: soft
    corner: { mass: 400 g, motion-ratio: 0.65 }
    wanted: { oil: bottle 450, at: 15 °C }
`.replace('viscosity: 450 cSt }', 'viscosity: 450 cSt, bottle: { volume: 60 ml } }'),
);

/** A silicone of that number at 25 °C. */
export const plain = (label: number): OilPart => ({
  name: `${label} cSt`,
  definition: {
    base: 'silicone',
    viscosity: { kind: 'silicone', point: { temperature: 298.15, kinematicViscosity: label * 1e-6 } },
  },
});

/** A build by its name. */
export function buildOf({ builds }: Parts, name: string): Build {
  const build = builds.find((one) => one.name === name);
  if (build === undefined) throw new Error(`no ${name}`);
  return build;
}
