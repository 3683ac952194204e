import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { benchStroke } from '../../lib/motion/bench/bench-stroke.js';
import type { LeftOutInertia } from '../../lib/motion/shock/oil-inertia.js';
import { readParts } from '../../lib/parts/index.js';
import { landed } from '../../notebooks/base/landed.js';
import { movingBuild } from '../../notebooks/base/moving-build.js';

const { builds } = readParts(
  readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8'),
);
const page = readFileSync(new URL('../../docs/motion.md', import.meta.url), 'utf8');
const temperature = 298.15;

interface Moved {
  readonly inertia: LeftOutInertia;
  readonly peak: number;
}

/** `0.08 to 0.15`, the least and the most of all builds. */
function span(moved: readonly Moved[], of: (one: Moved) => number, digits: number): string {
  const values = moved.map(of);
  const [least, most] = [Math.min(...values), Math.max(...values)].map((one) =>
    Number(one.toPrecision(digits)),
  );
  return `${least} to ${most}`;
}

function line(name: string, moved: readonly Moved[], forceDigits = 2): string {
  const force = span(moved, ({ inertia }) => inertia.largestForce, forceDigits);
  const whole = moved.map(({ peak }) => Math.round(peak));
  const number = span(moved, ({ inertia }) => inertia.frequencyNumber, 2);
  const off = span(moved, ({ inertia }) => 100 * inertia.steadyLaw, 2);
  return `| ${name} | ${force} N | ${Math.min(...whole)} to ${Math.max(...whole)} N | ${number} | ${off} % |`;
}

describe('docs/motion.md on the inertia of the oil, demo builds at 25 °C', () => {
  const shocks = builds.map((build) => ({ build, shock: movingBuild(build, temperature).shock }));

  test('mass at the shaft', () => {
    const grams = shocks.map(({ build, shock }) => {
      const stroke = {
        kind: 'sine',
        middle: build.shock.stroke / 2,
        amplitude: 0.001,
        frequency: 1,
        cycles: 1,
      } as const;
      return Math.round(1e3 * benchStroke(shock, stroke).inertia.apparentMass);
    });
    expect(page).toContain(`${Math.min(...grams)} to ${Math.max(...grams)} g in the demo builds`);
  });

  test('bench', () => {
    const moved = shocks.map(({ build, shock }) => {
      const stroke = {
        kind: 'sine',
        middle: build.shock.stroke / 2,
        amplitude: 0.01,
        frequency: 5,
        cycles: 2,
      } as const;
      const { inertia, largestForce } = benchStroke(shock, stroke);
      return { inertia, peak: largestForce.value };
    });
    expect(page).toContain(line('bench, 5 Hz, 10 mm to each side', moved, 2));
  });

  test('bump', () => {
    const time = 0.02;
    const times = Array.from({ length: 81 }, (_, i) => (i * time) / 80);
    const travels = times.map(
      (t) => 0.002 + t / 2 - (time / (4 * Math.PI)) * Math.sin((2 * Math.PI * t) / time),
    );
    const moved = shocks.map(({ shock }) => {
      const { inertia, largestForce } = benchStroke(shock, { kind: 'table', times, travels });
      return { inertia, peak: largestForce.value };
    });
    expect(page).toContain(line('bump, 1 m/s as sin² within 20 ms', moved));
  });

  test('landing', () => {
    const moved = builds.map((build) => {
      const { outcome } = landed(build, temperature, 0.15);
      return { inertia: outcome.inertia, peak: outcome.largestShockForce.value };
    });
    expect(page).toContain(line('landing from 0.15 m', moved));
  });
});
