import { describe, expect, test } from 'vitest';
import { damperModel } from '../../lib/damper/damper-model.js';
import { forcesAlongTravel } from '../../lib/damper/force-after-travel.js';
import { area, damper, disc as flatDisc, oil, pocket, shaft } from './pocket-damper.js';

// Four holes under a disc that its seat bends by 0.06 mm; the gas, squeezed by the cavity, lifts it on the way.
const valve = { ...flatDisc, preload: 6e-5 };
const holes = [
  { count: 2, diameter: 1.2e-3 },
  { count: 4, diameter: 1.4e-3, pitchDiameter: 7e-3 },
];
const model = damperModel({ ...damper, piston: { ...damper.piston, holes, valves: [valve] } }, oil);
const [disc] = model.pistonFlow.valves as [(typeof model.pistonFlow.valves)[number]];

/**
 * The pressure drop after each millimetre, worked out apart: midpoint steps of 1 µm of `dV_c/dx = A − A_s − Q/v`, the gas by Poisson, the disc shut until its opening pressure and then open
 * down to the least that keeps it so.
 */
function byHand(
  speed: number,
  millimetres: number,
): { readonly drops: readonly number[]; readonly snaps: number } {
  const way = 1e-6;
  let [cavity, open, snaps] = [0, false, 0];
  const dropAt = (travel: number, volume: number): number =>
    pocket.pressure * (pocket.volume / (pocket.volume - shaft * travel - volume)) ** 1.4 -
    model.damper.gas.airReleasePressure;
  const rate = (travel: number, volume: number): number => {
    const drop = dropAt(travel, volume);
    const through = model.pistonFlow.flow(drop) - disc.flow(drop) + (open ? disc.fallingFlow(drop) : 0);
    return area - shaft - through / speed;
  };
  const drops: number[] = [];
  for (let step = 0; step < millimetres * 1000; step++) {
    if (step % 1000 === 0) drops.push(dropAt(step * way, cavity));
    const half = cavity + (way / 2) * rate(step * way, cavity);
    cavity += way * rate((step + 0.5) * way, half);
    const drop = dropAt((step + 1) * way, cavity);
    const now = open ? drop >= disc.leastOpenDrop : drop > disc.openingPressure;
    if (now !== open) snaps++;
    open = now;
  }
  return { drops, snaps };
}

describe('a preloaded disc that the gas behind a cavity lifts', () => {
  // 0.8 m/s never lifts it, 1.3 m/s needs it wide open; between them neither the shut nor the open disc lets through what comes at the pressure that lifts it.
  test.each([
    [0.8, 0],
    [0.9, 1],
    [1, 1],
    [1.3, 1],
  ])('at %d m/s it snaps %d times', (speed, snaps) => {
    const hand = byHand(speed, 28);
    expect(hand.snaps).toBe(snaps);
    const travels = hand.drops.map((_, place) => place * 1e-3);
    const forces = forcesAlongTravel(model, { speed, position: 0 }, travels);
    for (const [place, drop] of hand.drops.entries()) {
      if (place === 0) continue;
      expect(forces[place]?.cavitating).toBe(true);
      expect(Math.abs((forces[place]?.pressureDrop ?? 0) / drop - 1)).toBeLessThan(1e-3);
    }
  });

  test('and then needs less pressure than a slower stroke that did not lift it', () => {
    const [shut, lifted] = [0.8, 0.9].map(
      (speed) => forcesAlongTravel(model, { speed, position: 0 }, [0.028])[0]?.pressureDrop ?? 0,
    ) as [number, number];
    expect(shut).toBeLessThan(disc.openingPressure);
    expect(lifted).toBeLessThan(0.95 * shut);
    expect(lifted).toBeGreaterThan(disc.leastOpenDrop);
  });
});
