import { madeName } from '../parts/made-builds.js';
import type { Build, Parts } from '../parts/parts.js';

/** Lines that a parts file lacks for a page. */
export interface MissingLines {
  /** What to do with them, and what in them to replace. */
  readonly advice: string;
  /** An example to copy: it is accepted as it stands, at the end of the file. */
  readonly lines: string;
}

/** Lists and keys of a parts file that a page may lack. */
export type Missing =
  | 'springs'
  | 'shop'
  | 'timed'
  | 'measurements'
  | 'builds'
  | 'oils'
  | 'pistons'
  | 'shocks';

const pistonLines = `pistons:
  # with a calliper; holes with drill shanks that just go in
  - { name: two 1.5, diameter: 11.9 mm, thickness: 2.5 mm, holes: [{ count: 2, diameter: 1.5 mm }] }`;

const shockLines = `shocks:
  # with a calliper: inside of the body, shaft, and how far the shaft moves
  - { name: front, bore: 12 mm, shaft: 3 mm, stroke: 25 mm }`;

const oilLines = `oils:
  # as the label of the bottle says; where it has a number without cSt, write trade-weight: 30 in place of viscosity
  - { name: bottle 350, base: silicone, viscosity: 350 cSt }`;

const shopLines = `shop:
  - { name: shop 200, base: silicone, viscosity: 200 cSt, bottle: { volume: 60 ml, price: 8.00 EUR } }
  - { name: shop 300, base: silicone, viscosity: 300 cSt, bottle: { volume: 60 ml, price: 8.00 EUR } }
  - { name: shop 400, base: silicone, viscosity: 400 cSt, bottle: { volume: 60 ml, price: 8.00 EUR } }
  - { name: shop 500, base: silicone, viscosity: 500 cSt, bottle: { volume: 60 ml, price: 8.00 EUR } }
  - { name: shop 700, base: silicone, viscosity: 700 cSt, bottle: { volume: 60 ml, price: 8.00 EUR } }`;

const atEnd = 'Add these lines at the end of the parts file, with your own values in place of the example.';

/**
 * The lines that would let a page answer, as an example that names the parts of the file.
 *
 * @param missing - what the file lacks
 * @param parts - the file
 */
export function missingLines(missing: Missing, { builds, oils, pistons, shocks }: Parts): MissingLines {
  const [build] = builds;
  switch (missing) {
    case 'oils':
      return { advice: atEnd, lines: oilLines };
    case 'pistons':
      return { advice: atEnd, lines: pistonLines };
    case 'shocks':
      return { advice: atEnd, lines: shockLines };
    case 'shop':
      return { advice: `${atEnd} They are the bottles that you could buy.`, lines: shopLines };
    case 'builds': {
      const [oil, piston, shock] = [oils[0]?.name ?? '…', pistons[0]?.name ?? '…', shocks[0]?.name ?? '…'];
      const advice = `${atEnd} A build says which piston and oil are in which shock; the piston must fit the bore.`;
      return { advice, lines: `builds:\n  - { name: front, ${namesOf({ oil, piston, shock })} }` };
    }
    case 'springs':
      return springLines(build);
    case 'timed':
      return {
        advice: `${atEnd} Hang the same weight on the shaft of two shocks that are built alike, springs off, and time how long each takes over the same travel, three times or more.`,
        lines: `timed:\n${['left', 'right'].map((name, index) => `  - { name: ${name}, build: ${quoted(build?.name ?? 'front')}, times: [${['1.6 s, 1.5 s, 1.6 s', '1.8 s, 1.7 s, 1.8 s'][index]}] }`).join('\n')}`,
      };
    case 'measurements':
      return {
        advice: `${atEnd} Hang a weight on the shaft, spring off, and time the shaft from one travel to another; 0 mm is the end of the stroke that the weight pulls it to.`,
        lines: `measurements:\n  - build: ${quoted(build?.name ?? 'front')}\n    temperature: 21 °C\n    drop: { weight: 100 g, times: [1.5 s, 1.6 s, 1.5 s], by: stopwatch, from: ${travel(build, 0.85)} mm, to: ${travel(build, 0.15)} mm }`,
      };
  }
}

/** A spring, and the build with it where the file leaves builds to be made; a build of the file gets one more key. */
function springLines(build: Build | undefined): MissingLines {
  const spring = 'springs:\n  - { name: soft, rate: 0.60 N/mm, free-length: 42 mm }';
  if (build === undefined || build.name !== madeName(build)) {
    const named = build === undefined ? 'the build' : `the build ${quoted(build.name)}`;
    return { advice: `${atEnd} Then add the line "spring: soft" to ${named}.`, lines: spring };
  }
  const names = namesOf({ oil: build.oil.name, piston: build.piston.name, shock: build.shock.name });
  return { advice: atEnd, lines: `${spring}\nbuilds:\n  - { name: front, ${names}, spring: soft }` };
}

function namesOf({ oil, piston, shock }: Readonly<Record<'oil' | 'piston' | 'shock', string>>): string {
  return `shock: ${quoted(shock)}, piston: ${quoted(piston)}, oil: ${quoted(oil)}`;
}

/** A name as YAML takes it, whatever it holds. */
function quoted(name: string): string {
  return /^[a-z][a-z0-9 .]*$/iu.test(name) && !/^(?:true|false|null|nan)$/iu.test(name)
    ? name
    : JSON.stringify(name);
}

function travel(build: Build | undefined, part: number): number {
  return Math.round((build?.shock.stroke ?? 0.025) * 1000 * part);
}
