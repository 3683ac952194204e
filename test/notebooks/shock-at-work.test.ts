import { expect, test } from 'vitest';
import { allBlocks } from '../../lib/page/index.js';
import { notebook } from '../../notebooks/bench-stroke.js';
import { changedFile, fileTexts, pageOf } from './answers.js';

/** The shock that is drawn of the smallest file with a bladder, its body 45 mm deep inside. */
function drawn(side: string) {
  const parts = changedFile(
    fileTexts.smallest,
    'stroke: 23 mm',
    `stroke: 23 mm
    inside: { length: 45 mm, cap-volume: 0 ml }
    compensator: { kind: bladder, volume: 0.6 ml, side: ${side} }`,
  );
  const motion = allBlocks(pageOf(notebook, parts)).find(({ kind }) => kind === 'motion');
  if (motion?.kind !== 'motion') throw new Error('no shock at work');
  return motion.shock;
}

// Fully out, the piston of 2.4 mm has its stroke of 23 mm before it; of 45 mm and the 4 mm that the page guesses behind it 23.6 mm are left, less what the gas takes of them.
test.each(['blind-side', 'shaft-side'])(
  'gas on the %s: what is drawn behind the piston has room in the body',
  (side) => {
    const { clearance, gasVolume, oilVolume, bore, shaftDiameter, stroke, pistonThickness } = drawn(side);
    expect(clearance).toBeGreaterThan(0);
    expect(clearance + stroke + pistonThickness).toBeLessThan(0.049 + 1e-6);
    expect(gasVolume).toBeGreaterThan(0);
    // All oil and gas stand in the drawn body, beside shaft and piston.
    const length = 0.049 - pistonThickness;
    const inside = (Math.PI / 4) * bore ** 2 * length - (Math.PI / 4) * shaftDiameter ** 2 * clearance;
    expect((oilVolume + gasVolume) / inside).toBeGreaterThan(0.8);
    expect((oilVolume + gasVolume) / inside).toBeLessThan(1.1);
  },
);
