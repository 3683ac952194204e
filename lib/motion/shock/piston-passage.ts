import { errorOfSwing } from '../../flow/hole/apparent-mass.js';
import type { HolePath } from '../../flow/hole/hole-path.js';
import { recoilOfJet } from '../../flow/hole/jet-momentum.js';
import { pistonInertance, swingingHoles } from '../../flow/piston/inertance.js';
import type { PistonFlow } from '../../flow/piston/parallel-flow.js';
import type { FluidState } from '../../fluid/oil/fluid-state.js';
import type { MovingShock } from './moving-shock.js';

/** What motion needs to know of a piston in its bore: flow and recoil at a pressure drop, inertia, Reynolds number. */
export function pistonPassage(
  pistonFlow: PistonFlow,
  bore: number,
  fluid: FluidState,
): Pick<MovingShock, 'passage' | 'inertance' | 'unsteadyFlow' | 'holeReynoldsNumber'> {
  const { paths, valves, gapFlow } = pistonFlow;
  const boreArea = (Math.PI / 4) * bore * bore;
  const speeds = new Float64Array(paths.length);
  // A step ends where the next one begins, and slopes are taken where rates were: the last answer is asked for again and again.
  const last = { pressureDrop: 0, flow: 0, recoil: 0 };
  return {
    passage: (pressureDrop, passage) => {
      if (pressureDrop === last.pressureDrop) {
        passage.flow = last.flow;
        passage.recoil = last.recoil;
        return;
      }
      // A stage that is only tried may leave the gas no room, where pressures are no numbers; then no step comes of it, and a shorter one is tried.
      if (!Number.isFinite(pressureDrop)) {
        passage.flow = Number.NaN;
        passage.recoil = Number.NaN;
        return;
      }
      let flow = gapFlow(pressureDrop);
      // Counted, since an iterator of pairs would cost as much as the physics.
      for (let index = 0; index < paths.length; index++) {
        const { area, resistance } = paths[index] as HolePath;
        const speed = resistance.meanSpeed(pressureDrop);
        speeds[index] = speed;
        flow += area * speed;
      }
      // A valve that has opened is what flows; a state of pressures alone does not remember the peak that opened it.
      for (const valve of valves) flow += valve.fallingFlow(pressureDrop);
      const boreSpeed = Math.abs(flow) / boreArea;
      let recoil = 0;
      for (let index = 0; index < paths.length; index++) {
        const { area, momentumFlow } = paths[index] as HolePath;
        const speed = speeds[index] as number;
        recoil += area * recoilOfJet(momentumFlow(speed), Math.abs(speed), boreSpeed);
      }
      passage.flow = flow;
      passage.recoil = flow < 0 ? -fluid.density * recoil : fluid.density * recoil;
      last.pressureDrop = pressureDrop;
      last.flow = passage.flow;
      last.recoil = passage.recoil;
    },
    inertance: pistonInertance(pistonFlow, fluid.density),
    unsteadyFlow: slowestToFollow(pistonFlow, fluid),
    holeReynoldsNumber: (pressureDrop) =>
      paths.reduce((largest, { diameter, resistance }) => {
        const speed = Math.abs(resistance.meanSpeed(pressureDrop));
        return Math.max(largest, (speed * diameter) / fluid.kinematicViscosity);
      }, 0),
  };
}

/** How far steady laws are off in the hole that lags most; nothing lags where there is none. */
function slowestToFollow(pistonFlow: PistonFlow, fluid: FluidState): MovingShock['unsteadyFlow'] {
  const holes = swingingHoles(pistonFlow).map(({ diameter, lengthRatio }) => ({
    diameter,
    length: lengthRatio * diameter,
  }));
  return (frequency) =>
    holes
      .map((hole) => errorOfSwing(hole, fluid, frequency))
      .reduce((worst, one) => (one.frequencyNumber > worst.frequencyNumber ? one : worst), noLag);
}

const noLag = { frequencyNumber: 0, steadyLaw: 0, withApparentMass: 0 };
