import { describe, expect, it } from 'vitest';
import { damperModel } from '../../lib/damper/damper-model.js';
import { drilledDamper } from '../../lib/decisions/design/drilled-damper.js';
import { assembleShock } from '../../lib/parts/index.js';
import { holesShort, holesText } from '../../notebooks/what-to-drill/naming.js';
import { files } from './answers.js';

const drilled = (count: number, drill: number, taper: number) => ({
  count,
  drill: drill / 1e3,
  taper: taper / 1e3,
  thickness: 2.5e-3,
});

describe('what to drill, in words of the bench', () => {
  it('a straight hole has the size of its drill', () => {
    expect(holesText(drilled(5, 1.4, 0))).toBe('5 holes of 1.4 mm');
    expect(holesText(drilled(1, 0.9, 0))).toBe('one hole of 0.9 mm');
    expect(holesShort(drilled(5, 1.4, 0))).toBe('5 × 1.4 mm');
    expect(holesShort(drilled(1, 0.9, 0))).toBe('1 × 0.9 mm');
  });

  it('a tapered one is drilled narrow and reamed wide, half of the taper on each side of its mean', () => {
    expect(holesText(drilled(1, 1, 0.2))).toBe('one hole of 0.9 mm, reamed to 1.1 mm at the shaft side');
    expect(holesText(drilled(4, 1, -0.2))).toBe('4 holes of 0.9 mm, reamed to 1.1 mm at the blind side');
    expect(holesShort(drilled(4, 1.4, 0.1))).toBe('4 × 1.35 mm, shaft side 1.45 mm');
    expect(holesShort(drilled(4, 1.4, -0.1))).toBe('4 × 1.35 mm, blind side 1.45 mm');
  });

  it('the side that is named is the wide one of the damper that was computed', () => {
    const [build] = files.demo.builds;
    if (build === undefined) throw new Error('no build');
    const { damper } = assembleShock(build);
    for (const taper of [0.2, -0.2]) {
      const one = drilled(4, 1.4, taper);
      const { damper: made } = damperModel(drilledDamper(damper, one), {
        kinematicViscosity: 350e-6,
        density: 970,
      });
      const [hole] = made.piston.holes;
      const shaftSide = hole?.shape?.kind === 'conical' ? (hole.shape.shaftSideDiameter ?? 0) : 0;
      expect(shaftSide > (hole?.diameter ?? 0)).toBe(holesText(one).endsWith('shaft side'));
      expect(Math.min(shaftSide, hole?.diameter ?? 0)).toBeCloseTo(1.3e-3, 9);
    }
  });
});
