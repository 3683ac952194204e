import type { DamperModel } from '../damper/damper-model.js';
import { compressedGasPressure } from '../damper/gas.js';
import { jetMomentum } from '../damper/oil-force.js';
import { pressureDropLimitAt } from '../damper/pressure-drop-limit.js';
import { lookAtLoss, profileGrowth } from '../flow/inertial-loss.js';
import { sharpCreepingNumber, sharpLoss } from '../flow/sharp-hole.js';
import { oilDensity } from '../fluid/density.js';
import { viscosityAt } from '../fluid/viscosity-line.js';
import type { Offsets } from './offsets.js';
import type { TolerancedBuild } from './tolerances.js';

/** The holes of one build in its oil, with the gap beside them. One record serves all builds: making one takes as long as a force. */
interface BoundHoles {
  lengthRatio: number;
  growth: number;
  /** Of all holes [m²]. */
  area: number;
  /** Flow per pressure drop of the gap [m³/(s·Pa)]. */
  gapConductance: number;
  /** Pressure drop per speed in the creeping limit [Pa·s/m]. */
  creepingSlope: number;
  halfDensity: number;
  reynoldsPerSpeed: number;
}

const { exit, development, contraction } = sharpLoss;
const perOnset = 1 / sharpLoss.onset;

/** Loss coefficient and its slope, then the state of the holes: speed [m/s] and pressure drop [Pa], both without sign. */
const loss = new Float64Array(2);
const state = new Float64Array(2);

/** Below this step against the speed, the pressure drop is a straight line to twelve digits. */
const straight = 1e-6;
const stepLimit = 60;

/**
 * Speed in the holes and pressure drop at which holes and gap pass a flow (`perSpeed` their area, `perDrop` the conductance of the gap), or at
 * which the pressure drop alone has a value (0 and 1). The pressure drop is convex in the speed, so that Newton's first step leads above the
 * answer from any start, and all others fall onto it.
 */
function solve(holes: BoundHoles, start: number, perSpeed: number, perDrop: number, target: number): void {
  const { lengthRatio, growth, creepingSlope, halfDensity, reynoldsPerSpeed } = holes;
  let speed = start;
  for (let iteration = 0; iteration < stepLimit; iteration++) {
    const reynoldsNumber = reynoldsPerSpeed * speed;
    lookAtLoss(reynoldsNumber, lengthRatio, growth, exit, development, contraction, perOnset, 0, 1, loss);
    const coefficient = loss[0] ?? 0;
    const drop = speed * (creepingSlope + halfDensity * speed * coefficient);
    const slope = creepingSlope + halfDensity * speed * (2 * coefficient + reynoldsNumber * (loss[1] ?? 0));
    const step = (perSpeed * speed + perDrop * drop - target) / (perSpeed + perDrop * slope);
    speed -= step;
    if (Math.abs(step) <= straight * speed) {
      state[0] = speed;
      state[1] = drop - step * slope;
      return;
    }
  }
  throw new RangeError('the steps of the pressure drop do not end');
}

/**
 * Forces of many builds whose sizes are slightly off those of one that was checked: one size of straight sharp holes, no valve, an oil
 * that does not thin. It is the arithmetic of `damperModel` and `oilForce` without their objects, which would take most of the time where
 * each build is used for a few speeds only; test/laws/decisions-light-model.test.ts holds the two against each other.
 *
 * @returns a function that writes the force of oil and gas at each speed, or tells that the sizes are impossible
 */
export function straightHoleForces(
  { damper, oil, temperature, position, speeds }: TolerancedBuild,
  checked: DamperModel,
): (off: Offsets, result: Float64Array) => boolean {
  const { piston } = damper;
  const [group] = piston.holes;
  if (group === undefined) throw new RangeError('a piston with one size of hole is needed');
  const { blindShare, shaftArea } = checked;
  const eccentricConductance = 1 + 1.5 * piston.eccentricity ** 2;
  const eccentricDrag = 1 / Math.sqrt(1 - piston.eccentricity ** 2);
  const gas = { ...damper.gas };
  const holes: BoundHoles = {
    lengthRatio: 0,
    growth: 0,
    area: 0,
    gapConductance: 0,
    creepingSlope: 0,
    halfDensity: 0,
    reynoldsPerSpeed: 0,
  };
  return (off, result) => {
    const diameter = group.diameter + off.holeDiameter;
    const thickness = piston.thickness + off.thickness;
    const bore = damper.bore + off.bore;
    const pistonDiameter = piston.diameter + off.bore - 2 * off.gap;
    const gapHeight = (bore - pistonDiameter) / 2;
    const oilTemperature = temperature + off.temperature;
    const kinematicViscosity = viscosityAt(oil.typical, oilTemperature) * (1 + off.viscosity);
    const density = oilDensity(oil.base, oilTemperature, oil.densityAt15Celsius);
    const possible =
      diameter > 0 && thickness > 0 && pistonDiameter > 0 && gapHeight > 0 && kinematicViscosity > 0;
    if (!possible) return false;

    const dynamicViscosity = density * kinematicViscosity;
    const gapCircumference = Math.PI * (bore - gapHeight);
    const lengthRatio = thickness / diameter;
    holes.lengthRatio = lengthRatio;
    holes.growth = profileGrowth(sharpLoss.development, lengthRatio);
    holes.area = group.count * (Math.PI / 4) * diameter * diameter;
    holes.gapConductance =
      ((gapCircumference * gapHeight * gapHeight * gapHeight) / (12 * dynamicViscosity * thickness)) *
      eccentricConductance;
    holes.creepingSlope = (dynamicViscosity * sharpCreepingNumber(lengthRatio)) / diameter;
    holes.halfDensity = 0.5 * density;
    holes.reynoldsPerSpeed = diameter / kinematicViscosity;
    const dampingArea =
      (Math.PI / 4) * pistonDiameter * pistonDiameter +
      (gapCircumference * gapHeight) / 2 -
      blindShare * shaftArea;
    const skirtDrag = ((dynamicViscosity * gapCircumference * thickness) / gapHeight) * eccentricDrag;
    const boreArea = (Math.PI / 4) * bore * bore;
    gas.volume = damper.gas.volume + off.gasVolume;
    const inside = compressedGasPressure(gas, shaftArea * position);
    const gasForce = shaftArea * (inside - gas.ambientPressure);

    for (let place = 0; place < speeds.length; place++) {
      const speed = speeds[place] ?? 0;
      const size = Math.abs(speed);
      const swept = dampingArea * size;
      const largestDrop = pressureDropLimitAt(checked, inside, speed);
      let flow = swept;
      solve(holes, swept / holes.area, holes.area, holes.gapConductance, swept);
      if ((state[1] ?? 0) > largestDrop) {
        solve(holes, state[0] ?? 0, 0, 1, largestDrop);
        flow = holes.area * (state[0] ?? 0) + holes.gapConductance * largestDrop;
      }
      const holeSpeed = state[0] ?? 0;
      const recoil =
        density * holes.area * holeSpeed * Math.max(jetMomentum * holeSpeed - flow / boreArea, 0);
      const force = dampingArea * (state[1] ?? 0) - recoil + skirtDrag * size;
      result[place] = (speed < 0 ? -force : force) + gasForce;
    }
    return true;
  };
}
