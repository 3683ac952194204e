import { describe, expect, it } from 'vitest';
import { cavitationOnset } from '../../lib/damper/cavitation-onset.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { assembleShock, type Parts } from '../../lib/parts/index.js';
import { notebook } from '../../notebooks/lesson.js';
import { files, numbersIn, pageOf } from './answers.js';

/** What the drawn shock does, and the onset of cavitation in compression on the way in by the steady law [m/s]. */
function atWork(parts: Parts, middle: string) {
  const page = pageOf(notebook, parts, { slow: '5 mm/s', middle: `${middle} mm/s` });
  const drawn = page.blocks.find((one) => one.kind === 'motion');
  const [build] = parts.builds;
  if (drawn?.kind !== 'motion' || build === undefined) throw new Error('nothing drawn');
  const text = page.blocks[page.blocks.indexOf(drawn) - 1];
  const holes = [{ count: 2, diameter: 1.6e-3 }];
  const { damper } = assembleShock({
    ...build,
    piston: { ...build.piston, piston: { ...build.piston.piston, holes } },
  });
  const model = damperModel(damper, fluidAt(createOil(build.oil.definition), 293.15));
  const { stroke } = build.shock;
  const onset = (position: number) =>
    cavitationOnset(model, 'compression', position)?.speed ?? Number.POSITIVE_INFINITY;
  return {
    said: text?.kind === 'text' ? text.text : '',
    drawn,
    ends: [onset(0.05 * stroke), onset(0.95 * stroke)].sort((a, b) => a - b),
    behind: (Math.PI / 4) * (damper.bore ** 2 - damper.shaftDiameter ** 2),
  };
}

describe.each(['demo', 'smallest'] as const)('the shock of %s at work', (file) => {
  const { ends } = atWork(files[file], '100');
  const [first = 0, last = 0] = ends;

  it('stays whole below the onset of the steady law, and has a cavity behind its piston above it', () => {
    const below = atWork(files[file], (900 * first).toFixed(0));
    const [build] = files[file].builds;
    expect(below.drawn.alt).toContain(`A cut along 2 holes of 1.6 mm in ${build?.shock.name},`);
    expect(below.drawn.shock.holes).toEqual([1.6e-3, 1.6e-3]);
    expect(below.said).toContain('stays whole');
    expect(Math.max(...below.drawn.frames.map(({ cavity }) => cavity))).toBe(0);
    const above = atWork(files[file], (1100 * Math.max(last, 2 * first)).toFixed(0));
    expect(above.said).toContain('On the way in the gas cannot');
    const [volume = 0] = numbersIn(above.said, /cavity of up to ([\d.]+) ml opens/u);
    const [lost = 0] = numbersIn(above.said, /up to ([\d.]+) mm of the way out/u);
    // By hand: the room of a cavity over the area that the piston sweeps there.
    expect(Math.abs(lost - (1e3 * (volume * 1e-6)) / above.behind)).toBeLessThan(0.15);
    const widest = above.drawn.frames.reduce((a, b) => (b.cavity > a.cavity ? b : a));
    expect(1e6 * widest.cavity).toBeCloseTo(volume, 1);
    expect(widest.speed).toBeGreaterThan(0);
  });

  it('has the darker oil before its piston: in it is that of the blind end, out that of the shaft', () => {
    const { drawn } = atWork(files[file], (900 * first).toFixed(0));
    for (const frame of drawn.frames.slice(2, -2)) {
      if (Math.abs(frame.speed) < 1e-6) continue;
      const [before, behind] =
        frame.speed > 0
          ? [frame.blindPressure, frame.shaftPressure]
          : [frame.shaftPressure, frame.blindPressure];
      expect(before).toBeGreaterThan(behind);
    }
  });
});
