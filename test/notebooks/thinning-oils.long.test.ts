import { describe, expect, it } from 'vitest';
import { pagePassed } from '../../lib/page/index.js';
import { readParts } from '../../lib/parts/index.js';
import { notebook as dayPlan } from '../../notebooks/day-plan.js';
import { notebook as match } from '../../notebooks/match.js';
import { notebook as orderPlan } from '../../notebooks/order-plan.js';
import { changedFile, files, fileTexts, pageOf, tableOf, wordsOf } from './answers.js';

const thins = 'shear-thinning: { law: carreau, time: 3 ms, at: 25 °C, exponent: 0.6 }';
/** The shop of the demo, whose 350 thins from about a thousand a second on. */
const thinning = changedFile(
  fileTexts.demo,
  /(name: shop 350,\n {6}base: silicone,)/u,
  `$1\n      ${thins},`,
);

describe('bottles that thin when sheared', () => {
  it('are matched as they thin: softer than the same oil that does not', () => {
    const meanOf = (parts: typeof thinning) => {
      const page = pageOf(match, parts, { now: '20 °C' });
      const row = tableOf(page, 'bottles').rows.find(([name]) => name === 'shop 350');
      return String(row?.[1] ?? 'not among the nearest');
    };
    expect(meanOf(files.demo)).toBe('right');
    expect(meanOf(thinning)).toMatch(/too soft|not among/u);
  });

  it('are planned as at rest, and the plans say so of them alone', () => {
    for (const notebook of [orderPlan, dayPlan]) {
      expect(wordsOf(pageOf(notebook, files.demo))).not.toContain('thinning');
      const page = pageOf(notebook, thinning);
      expect(wordsOf(page)).toContain(
        'without the thinning that the parts file measures: shop 350. The faster the shaft, the softer',
      );
      expect(pagePassed(page)).toBe(true);
    }
  });

  it('are checked as they are planned, where no other bottle is there', () => {
    // Its rim alone lets oil past, so that the oil does not stay whole at the speeds of the plan either.
    const alone = readParts(`dashpot: 1
oils:
  - name: runny
    base: silicone
    viscosity: 100 cSt
    bottle: { volume: 40 ml, price: 9 EUR }
    shear-thinning: { law: cross, time: 0.001 µs, at: 25 °C, exponent: 0.3, floor: 0.05 }
pistons: [{ name: plate, diameter: 9.8 mm, thickness: 2 mm, holes: [] }]
shocks: [{ name: short, bore: 10 mm, shaft: 2.5 mm, stroke: 18 mm, inside: { length: 35 mm } }]
builds: [{ name: front, shock: short, piston: plate, oil: runny, wanted: { oil: runny, at: 20 °C } }]
`);
    for (const notebook of [orderPlan, dayPlan]) expect(pagePassed(pageOf(notebook, alone))).toBe(true);
  });
});
