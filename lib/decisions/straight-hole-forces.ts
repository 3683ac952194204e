import { ConvergenceError } from '../base/root-finding.js';
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

/** One build bound to its oil, in numbers alone. One record serves all builds: making one takes as long as a force. */
interface BoundBuild {
  lengthRatio: number;
  growth: number;
  /** Of all holes [m²]. */
  holeArea: number;
  boreArea: number;
  dampingArea: number;
  /** Flow per pressure drop of the gap [m³/(s·Pa)]. */
  gapConductance: number;
  /** Pressure drop per speed in the creeping limit [Pa·s/m]. */
  creepingSlope: number;
  density: number;
  reynoldsPerSpeed: number;
  /** Drag of the rim per speed [N·s/m]. */
  skirtDrag: number;
}

const unbound: BoundBuild = {
  lengthRatio: 0,
  growth: 0,
  holeArea: 0,
  boreArea: 0,
  dampingArea: 0,
  gapConductance: 0,
  creepingSlope: 0,
  density: 0,
  reynoldsPerSpeed: 0,
  skirtDrag: 0,
};

const { exit, development, contraction } = sharpLoss;
const perOnset = 1 / sharpLoss.onset;

/** Loss coefficient and its slope; then speed in the holes [m/s] and pressure drop [Pa], without sign. Read at once, never handed out. */
const loss = new Float64Array(2);
const state = new Float64Array(2);

/** Below this step against the speed, the pressure drop is a straight line to twelve digits. */
const straight = 1e-6;
const stepLimit = 60;

/**
 * Finds the state where holes and gap pass a flow (`perSpeed` the area of the holes, `perDrop` the conductance of the gap), or where the
 * pressure drop has a value (0 and 1). The pressure drop is convex in the speed, so that Newton's first step leads above the answer from any
 * start, and all others fall onto it.
 */
function solve(build: BoundBuild, start: number, perSpeed: number, perDrop: number, target: number): void {
  const { lengthRatio, growth, creepingSlope, density, reynoldsPerSpeed } = build;
  let speed = start;
  for (let iteration = 0; iteration < stepLimit; iteration++) {
    const reynoldsNumber = reynoldsPerSpeed * speed;
    lookAtLoss(reynoldsNumber, lengthRatio, growth, exit, development, contraction, perOnset, 0, 1, loss);
    const coefficient = loss[0] ?? 0;
    const impulse = 0.5 * density * speed;
    const drop = speed * (creepingSlope + impulse * coefficient);
    const slope = creepingSlope + impulse * (2 * coefficient + reynoldsNumber * (loss[1] ?? 0));
    const step = (perSpeed * speed + perDrop * drop - target) / (perSpeed + perDrop * slope);
    speed -= step;
    if (Math.abs(step) <= straight * speed) {
      state[0] = speed;
      state[1] = drop - step * slope;
      return;
    }
  }
  throw new ConvergenceError('pressure drop of the piston', 0, start);
}

/** Force of the oil [N] without its sign, at a shaft speed without its sign; the pressure drop is held where the oil tears. */
function oilForceOf(build: BoundBuild, speed: number, largestDrop: number): number {
  const { holeArea, boreArea, dampingArea, gapConductance, density, skirtDrag } = build;
  const swept = dampingArea * speed;
  let flow = swept;
  solve(build, swept / holeArea, holeArea, gapConductance, swept);
  if ((state[1] ?? 0) > largestDrop) {
    solve(build, state[0] ?? 0, 0, 1, largestDrop);
    flow = holeArea * (state[0] ?? 0) + gapConductance * largestDrop;
  }
  const holeSpeed = state[0] ?? 0;
  const recoil = density * holeArea * holeSpeed * Math.max(jetMomentum * holeSpeed - flow / boreArea, 0);
  return dampingArea * (state[1] ?? 0) - recoil + skirtDrag * speed;
}

/** Binds builds that differ from one that was checked, and tells whether their sizes are possible. */
function binder(
  { damper, oil, temperature }: TolerancedBuild,
  { blindShare, shaftArea }: DamperModel,
  build: BoundBuild,
): (off: Offsets) => boolean {
  const { piston } = damper;
  const [group] = piston.holes;
  if (group === undefined) throw new RangeError('a piston with one size of hole is needed');
  const eccentricConductance = 1 + 1.5 * piston.eccentricity ** 2;
  const eccentricDrag = 1 / Math.sqrt(1 - piston.eccentricity ** 2);
  return (off) => {
    const diameter = group.diameter + off.holeDiameter;
    const thickness = piston.thickness + off.thickness;
    const bore = damper.bore + off.bore;
    const pistonDiameter = piston.diameter + off.bore - 2 * off.gap;
    const gapHeight = (bore - pistonDiameter) / 2;
    const oilTemperature = temperature + off.temperature;
    const kinematicViscosity = viscosityAt(oil.typical, oilTemperature) * (1 + off.viscosity);
    const density = oilDensity(oil.base, oilTemperature, oil.densityAt15Celsius);
    const dynamicViscosity = density * kinematicViscosity;
    const gapCircumference = Math.PI * (bore - gapHeight);
    const gapArea = gapCircumference * gapHeight;
    const lengthRatio = thickness / diameter;
    build.lengthRatio = lengthRatio;
    build.growth = profileGrowth(development, lengthRatio);
    build.holeArea = group.count * (Math.PI / 4) * diameter * diameter;
    build.boreArea = (Math.PI / 4) * bore * bore;
    build.dampingArea =
      (Math.PI / 4) * pistonDiameter * pistonDiameter + gapArea / 2 - blindShare * shaftArea;
    build.gapConductance =
      ((gapArea * gapHeight * gapHeight) / (12 * dynamicViscosity * thickness)) * eccentricConductance;
    build.creepingSlope = (dynamicViscosity * sharpCreepingNumber(lengthRatio)) / diameter;
    build.density = density;
    build.reynoldsPerSpeed = diameter / kinematicViscosity;
    build.skirtDrag = ((dynamicViscosity * gapCircumference * thickness) / gapHeight) * eccentricDrag;
    return diameter > 0 && thickness > 0 && pistonDiameter > 0 && gapHeight > 0 && kinematicViscosity > 0;
  };
}

/**
 * Forces of many builds whose sizes are slightly off those of one that was checked: one size of straight sharp holes, no valve, an oil
 * that does not thin. It is the arithmetic of `damperModel` and `oilForce` without their objects, which would take most of the time where
 * each build is used for a few speeds only; test/laws/decisions-light-model.test.ts holds the two against each other.
 *
 * @returns a function that writes the force of oil and gas at each speed, or tells that the sizes are impossible
 */
export function straightHoleForces(
  toleranced: TolerancedBuild,
  checked: DamperModel,
): (off: Offsets, result: Float64Array) => boolean {
  const { damper, position, speeds } = toleranced;
  const { shaftArea } = checked;
  const build = { ...unbound };
  const bind = binder(toleranced, checked, build);
  const gas = { ...damper.gas };
  return (off, result) => {
    if (!bind(off)) return false;
    gas.volume = damper.gas.volume + off.gasVolume;
    const inside = compressedGasPressure(gas, shaftArea * position);
    const gasForce = shaftArea * (inside - gas.ambientPressure);
    for (let place = 0; place < speeds.length; place++) {
      const speed = speeds[place] ?? 0;
      const force = oilForceOf(build, Math.abs(speed), pressureDropLimitAt(checked, inside, speed));
      result[place] = (speed < 0 ? -force : force) + gasForce;
    }
    return true;
  };
}
