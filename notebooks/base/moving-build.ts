import { InputError } from '../../lib/base/input-error.js';
import { type DamperModel, damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { gasPressure } from '../../lib/gas/gas-state.js';
import type { Corner } from '../../lib/motion/corner/corner.js';
import { cornerGuesses } from '../../lib/motion/corner/guesses.js';
import { movingShock } from '../../lib/motion/shock/bind-moving-shock.js';
import type { MovingShock } from '../../lib/motion/shock/moving-shock.js';
import type { AssembledShock } from '../../lib/parts/assembly/assembled-shock.js';
import type { Build } from '../../lib/parts/parts.js';
import { millilitres } from './bench-wording.js';
import { guessedMotionRatio } from './guessed-ratios.js';
import { knownOil, knownShock } from './known.js';
import { guessedMasses } from './possible-corners.js';
import { celsius } from './wording.js';

/** Mass on a corner where the file does not say it [kg]: a quarter of a small car, a guess. */
const { likely: guessedMass } = guessedMasses;

/** Room behind the piston at full extension beside its spacers [m]: a guess. */
const guessedClearance = 4e-3;

/** Bulk modulus of silicone oil without air [Pa], 0.85 ± 0.08 GPa (Tait fit and sound speed, from memory). */
const bulkModulus = 0.85e9;

/** Share of the stroke that the rubber of the bump stop takes: a guess. */
const bumpStopShare = 0.88;

/** The two ends of what air does in the oil: one that holds to vacuum and carries bubbles, one that lets air go early and carries none. */
export type AirEnd = 'likely' | 'bubbles' | 'early release';

/** A build ready to move. */
export interface MovingBuild {
  readonly build: Build;
  readonly assembled: AssembledShock;
  readonly shock: MovingShock;
}

/** The gas of a build is too little for its shaft, or for shaft and cavity together: the oil locks. In the words of the parts file. */
export class NoRoomForTheShaft extends InputError {
  constructor({ name }: Build, temperature: number, room: number, needed: string) {
    super({
      field: `the gas of "${name}"`,
      value: `${millilitres(room)} at ${celsius(temperature)}`,
      accepted: `${needed}, or the oil locks: say what makes room under compensator, close it with less oil, or choose a colder oil or a lower drop`,
    });
  }
}

/** Binds a build to its oil, or another one, at a temperature. */
export function movingBuild(
  build: Build,
  temperature: number,
  end: AirEnd = 'likely',
  parts: Partial<Pick<Build, 'oil' | 'piston'>> = {},
): MovingBuild {
  const whole = { ...build, ...parts };
  const assembled = knownShock(whole);
  const { closed, damper } = assembled;
  const { shock } = whole;
  const { airFraction, releasePressure } = cornerGuesses;
  const release =
    end === 'early release' ? releasePressure.high : end === 'bubbles' ? 0 : damper.gas.airReleasePressure;
  const model = damperModel(damper, fluidAt(knownOil(whole.oil.definition), temperature));
  const mixed = damper.gas.layout === 'emulsion';
  const { shaftArea } = model;
  const room = model.gas.capacity;
  const shaft = shaftArea * shock.stroke;
  if (!mixed && room <= shaft)
    throw new NoRoomForTheShaft(whole, temperature, room, `more than the ${millilitres(shaft)} of its shaft`);
  // Gas that stands lower than a guess of where air comes out has let it out long ago.
  const airReleasePressure = Math.min(release, 0.5 * gasPressure(model.gas, 0));
  const moved = { ...model, damper: { ...damper, gas: { ...damper.gas, airReleasePressure } } };
  return {
    build: whole,
    assembled,
    shock: movingShock(moved, {
      // At full extension a gas that was closed with the shaft further in fills its room too.
      ...oilOnBothSides(
        moved,
        whole,
        assembled,
        mixed ? closed.gasVolume + damper.gas.closing.displacedVolume : 0,
      ),
      bulkModulus,
      airFraction: end === 'bubbles' && !mixed ? airFraction.likely : 0,
    }),
  };
}

/** Oil in all, and on the side of the piston away from the gas at full extension [m³]; a body that is itself a guess is as long as the piston needs. */
function oilOnBothSides(
  { damper, pistonArea, shaftArea }: DamperModel,
  { shock }: Build,
  { closed, known }: AssembledShock,
  mixedIn: number,
): { readonly volume: number; readonly farVolume: number } {
  const annulus = (Math.PI / 4) * (damper.bore ** 2 - damper.shaftDiameter ** 2);
  // The chambers of the build have no clearance beyond the spacers; what is added behind the piston is full of oil too.
  const clearance = annulus * guessedClearance;
  const beside = annulus * closed.chamber.shaftInside + clearance;
  const onShaftSide = damper.gas.layout === 'shaft-side';
  const swept = (onShaftSide ? pistonArea : pistonArea - shaftArea) * damper.stroke;
  const said = closed.oilVolume + clearance + mixedIn;
  const volume = known.inside || known.oilVolume ? said : Math.max(said, swept + 2 * beside);
  const spare = volume - swept;
  if (spare <= 0) {
    throw new InputError({
      field: 'oil-volume',
      value: `${millilitres(said)} in ${shock.name}`,
      accepted: `more than the piston sweeps on its way in, ${millilitres(swept)}`,
    });
  }
  // Half of what the stroke leaves over stays on either side at least.
  const near = Math.min(beside, spare / 2);
  return { volume, farVolume: onShaftSide ? volume - near : near };
}

/** A corner of the car and what in it is a guess. */
export interface GuessedCorner {
  readonly corner: Corner;
  /** Sentences that name each guess. */
  readonly guesses: readonly string[];
}

/** The corner that a build carries; what the file does not say is a guess that is named. */
export function cornerOf(build: Build): GuessedCorner {
  const { spring, corner, shock } = build;
  if (spring === undefined)
    throw new InputError({
      field: 'spring',
      value: 'none',
      accepted: `named in the build "${build.name}", with its rate in the list springs, for example { name: soft, rate: 0.60 N/mm, free-length: 42 mm }`,
    });
  const { wheelMass, tyreStiffness, tyreDamping, stopStiffness, stopDamping } = cornerGuesses;
  const stop = { stiffness: stopStiffness.likely, damping: stopDamping.likely };
  const guesses = [
    ...(corner === undefined
      ? [
          `Mass on the corner ${guessedMass * 1000} g and ${guessedMotionRatio} mm of shaft for each mm of wheel are guesses: the build has no "corner".`,
        ]
      : []),
    `Wheel with hub ${wheelMass.likely * 1000} g (${wheelMass.low * 1000} to ${wheelMass.high * 1000}), tyre ${tyreStiffness.likely / 1000} N/mm (${tyreStiffness.low / 1000} to ${tyreStiffness.high / 1000}) and stops of ${stopStiffness.likely / 1000} N/mm are guesses.`,
    `The bump stop is touched ${Math.round(1000 * (1 - bumpStopShare) * shock.stroke)} mm before the end of the stroke, and the spring just touches its seats with the shaft fully out: guesses.`,
  ];
  return {
    corner: {
      sprungMass: corner?.sprungMass ?? guessedMass,
      wheelMass: wheelMass.likely,
      motionRatio: corner?.motionRatio ?? guessedMotionRatio,
      springRate: spring.rate,
      springPreload: 0,
      tyre: { stiffness: tyreStiffness.likely, damping: tyreDamping.likely },
      bumpStop: { ...stop, from: bumpStopShare * shock.stroke },
      droopStop: stop,
    },
    guesses,
  };
}

/** What no computed motion was compared with, and what it leaves out. */
export const motionLimits: readonly string[] = [
  'Nothing here was compared with a test bench: no published loop of so small a shock was found. The equations were solved by three programs that agree (docs/motion.md).',
  'The sharp spike as a cavity collapses, and ringing above about 200 Hz, are left out.',
];

/** What every page of motion takes for granted and never saw. */
export const motionAssumptions: readonly string[] = [
  ...motionLimits,
  'Air is shown as a band: oil that lets air go early (0.2 bar) at one end, oil with 0.2 % of bubbles that holds to vacuum at the other; both are guesses.',
];

/** Sources of motion. */
export const motionSources: readonly string[] = [
  'Steinebach, BIT Numer. Math. 63 (2023) 27: Rodas5P, the integrator.',
  'Canudas de Wit, Olsson, Åström & Lischinsky, IEEE Trans. Autom. Control 40 (1995) 419: friction of the seals.',
];
