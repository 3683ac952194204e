import { describe, expect, it } from 'vitest';
import { readParts } from '../../lib/parts/index.js';
import { shaftSpeedsOf } from '../../notebooks/base/fast-speed.js';
import { fastestReboundOf } from '../../notebooks/base/shaft-speeds.js';

// Closed at 20 °C with the shaft fully in and 0.05 ml of gas: 0.16 ml make room for the shaft again as it comes out. About 2.6 ml of silicone grow by a
// thousandth a kelvin, 0.2 ml in 80 K: then nothing is left, the shaft all the way out.
const { builds } = readParts(`dashpot: 1
oils: [{ name: oil, base: silicone, viscosity: 350 cSt }]
pistons: [{ name: three holes, diameter: 11.92 mm, thickness: 2.4 mm, holes: [{ count: 3, diameter: 1.4 mm }] }]
shocks:
  - name: front
    bore: 12 mm
    shaft: 3 mm
    stroke: 23 mm
    inside: { length: 60 mm }
    compensator: { kind: bladder, volume: 0.05 ml }
    closing: { shaft: fully in, temperature: 20 °C }
springs: [{ name: soft, rate: 0.5 N/mm, free-length: 42 mm }]
builds: [{ name: front, shock: front, piston: three holes, oil: oil, spring: soft }]
`);

describe('the shaft speeds of a build', () => {
  it('out of a shock that warm oil fills with its shaft out nothing is driven, and the usual guess stands in', () => {
    const [build] = builds;
    if (build === undefined) throw new Error('no build');
    const at = (temperature: number) => ({ ...build, wanted: { oil: build.oil, temperature } });
    expect(fastestReboundOf(build, 283.15)).toBeGreaterThan(0);
    expect(shaftSpeedsOf(at(283.15)).middle).not.toBe(0.3);
    expect(fastestReboundOf(build, 353.15)).toBeUndefined();
    expect(shaftSpeedsOf(at(353.15)).middle).toBe(0.3);
  });
});
