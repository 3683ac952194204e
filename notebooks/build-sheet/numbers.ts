import { bubblePassage } from '../../lib/fill/air/bubble-passage.js';
import { airPassageTravel } from '../../lib/fill/air/dead-band.js';
import { airAfterBleeds, worthwhileBleeds } from '../../lib/fill/air/repeated-bleeding.js';
import { typicalSurfaceTension } from '../../lib/fill/air/typical-oil.js';
import { waitingTime } from '../../lib/fill/air/waiting-time.js';
import { closeShock } from '../../lib/fill/chamber/closed-shock.js';
import { coldestFillTemperature, lockTemperature } from '../../lib/fill/chamber/heat.js';
import { type OilOut, oilOutOnClosing } from '../../lib/fill/chamber/oil-out.js';
import { lockPosition } from '../../lib/fill/chamber/pressure-inside.js';
import { staticForce } from '../../lib/fill/chamber/static-force.js';
import { creepSpeed } from '../../lib/fill/friction/creep-speed.js';
import {
  frictionRulesBelow,
  rideHeightBand,
  slowHandSpeed,
} from '../../lib/fill/friction/seal-measurement.js';
import { type ShockLength, shockLength } from '../../lib/fill/length/shock-length.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { lengthsOf } from '../../lib/parts/assembly/lengths-of.js';
import type { Build } from '../../lib/parts/parts.js';
import { type BuiltShock, builtShock, damperAt, densityOf, riseSpeedIn, warmedTo } from './built-shock.js';
import { type HangTime, hangTime, type NoTime } from './hang-test.js';

/** What the builder chooses; SI. */
export interface Choices {
  readonly bench: number;
  readonly coldest: number;
  readonly hottest: number;
  readonly smallestBubble: number;
  readonly airAtFill: number;
  readonly weight: number;
  readonly lighterWeight: number;
  readonly holeTolerance: number;
  readonly temperatureTolerance: number;
  readonly motionRatio: number;
  readonly lengthTolerance: number;
}

/** Push of the resting shaft at one place. */
export interface Push {
  readonly position: number;
  readonly gas: number;
}

/** All numbers of one sheet; SI. */
export interface SheetNumbers {
  readonly built: BuiltShock;
  readonly oil: OilOut;
  readonly length: ShockLength | undefined;
  readonly wait: number;
  readonly airLeft: readonly number[];
  readonly bleeds: number;
  /** Travel lost for each volume of free air that passes the piston [m/m³]. */
  readonly travelPerAir: number;
  /** Radius from which a bubble stays under the smallest hole, and the outward shaft speed that frees it. */
  readonly stuckFrom: number | undefined;
  readonly freeingSpeed: number;
  readonly pushes: readonly Push[];
  /** Push at full compression, on the bench, coldest and hottest; undefined where the shaft locks before. */
  readonly pushAtEnd: { readonly bench: Edge; readonly coldest: Edge; readonly hottest: Edge };
  readonly lockAt: number;
  readonly locksFrom: number | undefined;
  readonly coldestFill: number | undefined;
  readonly hung: HangTime | NoTime;
  readonly hungLighter: HangTime | NoTime;
  /** Speed at which the gas pushes the shaft out from full compression [m/s]; 0 where friction holds it. */
  readonly creep: number;
  readonly frictionSpeed: number | undefined;
  /** Fastest hand on the scale that is still slow [m/s]; undefined without friction, or where every hand is. */
  readonly slowHand: number | undefined;
  readonly rideBand: number | undefined;
  /** Shaft travel for each wheel travel, of the parts file where it says so. */
  readonly motionRatio: number;
}

type Edge = number | undefined;

/** Travel that a further bleed must win back to be worth the work [m]. */
export const worthTravel = 0.1e-3;

/** Bubble radii that a fill leaves, from the finest seen to as large as a hole; an assumption. */
export const bubbleRadii = { smallest: 0.05e-3, largest: 1e-3 } as const;

/** Part of the air at fill that each opening draws in again; an assumption. */
export const drawnInShare = 0.1;

/** Gas that shall be left at the bump stop on the hottest oil, as a part of the gas at closing. */
export const reserveShare = 0.1;

/** Computes the sheet of a build. */
export function sheetNumbers(build: Build, choices: Choices): SheetNumbers {
  const { bench } = choices;
  const built = builtShock(build, bench);
  const { shock, closing } = built;
  const { chamber, compensator } = shock;
  const model = damperAt(built, bench);
  const travelPerAir = airPassageTravel(model, 1);
  const airLeft = airAfterBleeds(bleeding(built, choices), 5);
  const passage = smallestPassage(built, bench);
  const tolerances = { hole: choices.holeTolerance, temperature: choices.temperatureTolerance };
  const { stroke } = chamber;
  const endPush = pushAt(built, stroke, bench);
  const lengths = lengthsOf(build.shock, build.piston);
  const { corner, spring, shock: body } = build;
  const motionRatio = corner?.motionRatio ?? choices.motionRatio;
  return {
    built,
    oil: oilOutOnClosing(chamber, compensator, closing, 0),
    length: lengths === undefined ? undefined : shockLength(lengths),
    wait: waitingTime(choices.smallestBubble / 2, chamber.length, riseSpeedIn(built, bench)),
    airLeft,
    bleeds: worthwhileBleeds(airLeft, worthTravel / travelPerAir),
    travelPerAir,
    stuckFrom: passage?.stuckFrom,
    freeingSpeed:
      passage === undefined ? 0 : -model.pistonFlow.flow(-passage.pressureNeeded) / model.dampingArea,
    pushes: [0.25, 0.5, 0.75].flatMap((part): Push[] => {
      const gas = pushAt(built, part * stroke, bench);
      return gas === undefined ? [] : [{ position: part * stroke, gas }];
    }),
    pushAtEnd: {
      bench: endPush,
      coldest: pushAt(built, stroke, choices.coldest),
      hottest: pushAt(built, stroke, choices.hottest),
    },
    lockAt: lockPosition(shock, warmedTo(built, choices.hottest)),
    locksFrom:
      lockPosition(shock) > stroke ? lockTemperature(shock, stroke, densityOf(built.oil), 423.15) : bench,
    coldestFill: coldestFill(built, choices),
    hung: hangTime(built, bench, choices.weight, tolerances),
    hungLighter: hangTime(built, bench, choices.lighterWeight, tolerances),
    creep: endPush === undefined ? 0 : Math.max(creepSpeed(model, Math.max(endPush, 0)), 0),
    frictionSpeed: frictionRulesBelow(model, body.seal.typical.kineticForce),
    slowHand:
      body.seal.typical.kineticForce > 0 ? slowHandSpeed(model, body.seal.typical.kineticForce) : undefined,
    motionRatio,
    rideBand:
      spring === undefined
        ? undefined
        : rideHeightBand(body.seal.typical.breakawayForce, {
            wheelRate: spring.rate * motionRatio ** 2,
            motionRatio,
          }),
  };
}

function bleeding(built: BuiltShock, choices: Choices) {
  const riseSpeed = riseSpeedIn(built, choices.bench);
  const { length } = built.shock.chamber;
  return {
    airAtFill: choices.airAtFill,
    smallestRadius: bubbleRadii.smallest,
    largestRadius: bubbleRadii.largest,
    height: length,
    wait: waitingTime(choices.smallestBubble / 2, length, riseSpeed),
    airDrawnIn: drawnInShare * choices.airAtFill,
    riseSpeed,
  };
}

/** The smallest hole is the last to let bubbles through. */
function smallestPassage({ build, oil }: BuiltShock, temperature: number) {
  const diameters = build.piston.piston.holes.map(({ diameter }) => diameter);
  if (diameters.length === 0) return undefined;
  const { density } = fluidAt(oil, temperature);
  return bubblePassage(Math.min(...diameters) / 2, {
    density,
    surfaceTension: typicalSurfaceTension[oil.base],
  });
}

/** Push of the gas at a place and an oil temperature; `undefined` where the shaft locks before. */
export function pushAt(built: BuiltShock, position: number, temperature: number): Edge {
  const condition = warmedTo(built, temperature);
  if (lockPosition(built.shock, condition) <= position) return undefined;
  return staticForce(built.shock, position, condition);
}

function coldestFill(built: BuiltShock, { coldest, hottest }: Choices): Edge {
  const { chamber, compensator } = built.shock;
  const close = (temperature: number) => closeShock(chamber, compensator, { ...built.closing, temperature });
  const reserve = reserveShare * built.shock.gasVolume;
  return coldestFillTemperature(close, { coldest, hottest, reserve }, densityOf(built.oil));
}
