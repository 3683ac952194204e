import { describe, expect, test } from 'vitest';
import { forceWithCavity } from '../../lib/damper/cavity-force.js';
import type { Damper } from '../../lib/damper/damper.js';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { passageAtDrop } from '../../lib/damper/oil-force.js';
import { valveOpenings } from '../../lib/damper/valve-opening.js';
import { sealedGas } from '../../lib/gas/gas.js';
import { disc as valve } from './pocket-damper.js';

const oil = { kinematicViscosity: 3.5e-4, density: 970 };
const damper: Damper = {
  bore: 0.012,
  shaftDiameter: 0.003,
  stroke: 0.028,
  piston: {
    diameter: 0.01195,
    thickness: 0.0025,
    holes: [
      { count: 2, diameter: 1.2e-3, pitchDiameter: 7e-3 },
      { count: 2, diameter: 1.6e-3, pitchDiameter: 7e-3 },
    ],
    eccentricity: 0,
  },
  gas: sealedGas({ volume: 1e-6, pressure: 101_325, polytropicExponent: 1.4, ambientPressure: 101_325 }),
  seal: { kineticForce: 0, breakawayForce: 0 },
};

test.each(['shaft-side', 'blind-side'] as const)(
  'a valve on the %s beside a tapered hole lifts at the speed that makes its pressure in that direction',
  (face) => {
    const tapered = {
      ...damper.piston,
      holes: [
        { count: 2, diameter: 1.2e-3, shape: { kind: 'conical', shaftSideDiameter: 1.8e-3 } as const },
        { count: 2, diameter: 1.6e-3, pitchDiameter: 7.8e-3 },
      ],
      valves: [
        {
          face,
          covers: [1],
          outerDiameter: 0.0105,
          clampDiameter: 0.005,
          thickness: 1e-4,
          count: 1,
          elasticModulus: 2e11,
          poissonRatio: 0.3,
          preload: 5e-6,
        },
      ],
    };
    const gas = sealedGas({ volume: 1e-6, pressure: 1e8 });
    const model = damperModel({ ...damper, gas, piston: tapered }, oil);
    const [opening] = valveOpenings(model);
    const { pressureDrop } = damperForce(model, { speed: 0.9999 * (opening?.speed ?? 0), position: 0 });
    expect(Math.sign(pressureDrop)).toBe(face === 'shaft-side' ? 1 : -1);
    expect(Math.abs(pressureDrop) / (opening?.pressureDrop ?? 0)).toBeCloseTo(1, 3);
  },
);

describe('a piston with holes of two sizes', () => {
  const model = damperModel(damper, oil);
  const [small, large] = model.pistonFlow.paths;
  const speedIn = (path: typeof small, drop: number) => Math.abs(path?.resistance.meanSpeed(drop) ?? 0);

  test.each([-0.4, 0.05, 2])(
    'names the largest Reynolds number and shear rate of both, at %d m/s',
    (speed) => {
      const { pressureDrop, holeReynoldsNumber, wallShearRate, cavitating } = damperForce(model, {
        speed,
        position: 0,
      });
      expect(cavitating).toBe(speed === 2);
      const inSmall = speedIn(small, pressureDrop);
      const inLarge = speedIn(large, pressureDrop);
      const reynolds = Math.max(inSmall * 1.2e-3, inLarge * 1.6e-3) / 3.5e-4;
      const shear = Math.max((8 * inSmall) / 1.2e-3, (8 * inLarge) / 1.6e-3);
      expect(holeReynoldsNumber / reynolds).toBeCloseTo(1, 7);
      expect(wallShearRate / shear).toBeCloseTo(1, 7);
    },
  );

  test('sums the recoil of the jets of both', () => {
    const speed = -0.8;
    const { pressureDrop, jetRecoil } = damperForce(model, { speed, position: 0 });
    const inBore = (model.dampingArea * 0.8) / ((Math.PI / 4) * 0.012 ** 2);
    const recoil = [[1.2e-3, small] as const, [1.6e-3, large] as const].reduce((sum, [d, path]) => {
      const v = speedIn(path, pressureDrop);
      const momentum = path?.momentumFlow(-v) ?? 0;
      return sum + 970 * 2 * (Math.PI / 4) * d ** 2 * (momentum - 0.5 * v * inBore);
    }, 0);
    expect(-jetRecoil / recoil).toBeCloseTo(1, 7);
  });

  test('leaks more of its flow the faster it moves, since the gap stays viscous where holes do not', () => {
    const at = (speed: number) => damperForce(model, { speed, position: 0 });
    const { leakShare, pressureDrop } = at(-0.8);
    const leak = model.pistonFlow.gapConductance * -pressureDrop;
    expect(leakShare / (leak / (0.8 * model.dampingArea))).toBeCloseTo(1, 9);
    expect(leakShare).toBeGreaterThan(1.5 * at(0).leakShare);
  });

  test('rests with no flow in any hole', () => {
    const { holeReynoldsNumber, wallShearRate, jetRecoil } = damperForce(model, { speed: 0, position: 0 });
    expect([holeReynoldsNumber, wallShearRate, jetRecoil]).toEqual([0, 0, 0]);
    expect(model.pistonFlow.pressureDrop(0).holeSpeeds).toEqual([0, 0]);
  });

  test('says how much of the bore the holes fill', () => {
    const wide = { ...damper, piston: { ...damper.piston, holes: [{ count: 6, diameter: 2.2e-3 }] } };
    const warning = damperForce(damperModel(wide, oil), { speed: -0.01, position: 0 }).warnings.at(-1);
    expect(warning?.message).toContain('fill 20 % of the bore');
    expect(warning?.value).toBeCloseTo((6 * 2.2 ** 2) / 12 ** 2, 9);
  });
});

describe('a disc valve with a cavity behind the piston', () => {
  const model = damperModel({ ...damper, piston: { ...damper.piston, valves: [valve] } }, oil);

  test('lets through what the gas drives against the cavity', () => {
    const { cavitating, pressureDrop, gasPressure } = forceWithCavity(model, { speed: 2, position: 0 }, 1e-7);
    expect(cavitating).toBe(true);
    // 1 ml of gas less the 0.1 ml of the cavity, n = 1.4.
    expect(pressureDrop / (101_325 * (1 / 0.9) ** 1.4)).toBeCloseTo(1, 9);
    expect(gasPressure).toBe(pressureDrop);
    expect(passageAtDrop(model, pressureDrop).flow).toBe(model.pistonFlow.flow(pressureDrop));
  });

  test('names the direction in which it opens', () => {
    expect(valveOpenings(model)[0]?.direction).toBe('compression');
    const blind = { ...valve, face: 'blind-side' } as const;
    const other = damperModel({ ...damper, piston: { ...damper.piston, valves: [blind] } }, oil);
    expect(valveOpenings(other)[0]?.direction).toBe('rebound');
  });
});
