import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { damperForce } from '../../lib/damper/damper-force.js';
import { damperModel } from '../../lib/damper/damper-model.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { type Page, pageFigures, pagePassed, readParameterValues } from '../../lib/page/index.js';
import { assembleShock } from '../../lib/parts/assembly/assembled-shock.js';
import { readParts } from '../../lib/parts/index.js';
import { notebook as dayPlan } from '../../notebooks/day-plan.js';
import { notebook as orderPlan } from '../../notebooks/order-plan.js';
import { pageOfText } from './answers.js';

const demo = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');

/** A car of one build that is right on 350 cSt (at 25 °C) at 20 °C; shop and shelf as given. */
const car = (shop: readonly number[], owned: readonly number[] = [], more = ''): string => `dashpot: 1
oils:
  - { name: own 350, base: silicone, viscosity: 350 cSt, at: 25 °C }
${owned.map((label) => `  - { name: own ${label} full, base: silicone, viscosity: ${label} cSt, at: 25 °C, bottle: { volume: 60 ml, price: 7.00 EUR } }`).join('\n')}
pistons: [{ name: p, diameter: 11.94 mm, thickness: 2.5 mm, holes: [{ count: 2, diameter: 1.7 mm }] }]
shocks: [{ name: s, bore: 12 mm, shaft: 3 mm, stroke: 24 mm, inside: { length: 36 mm, cap-volume: 0.5 ml, solid-volume: 0.3 ml } }]
builds: [{ name: front, shock: s, piston: p, oil: own 350, quantity: 2, wanted: { oil: own 350, at: 20 °C } }]
shop:
${shop.map((label) => `  - { name: shop ${label}, base: silicone, viscosity: ${label} cSt, at: 25 °C, bottle: { volume: 60 ml, price: ${(label / 50).toFixed(2)} EUR } }`).join('\n')}
day:
  - { time: "08:00", temperature: 8 °C }
  - { time: "11:00", temperature: 20 °C }
  - { time: "15:00", temperature: 38 °C }
${more}`;

function pageOf(
  notebook: typeof orderPlan | typeof dayPlan,
  text: string,
  texts: Readonly<Record<string, string>> = {},
): Page {
  return pageOfText(notebook, text, texts);
}
const tableOf = (page: Page, id: string) => {
  const block = page.blocks.find((one) => one.kind === 'table' && one.id === id);
  if (block?.kind !== 'table') throw new Error(`no table ${id}`);
  return block.table;
};

// By Barry's law 763.1 (1/T − 1/298.15), by hand: the shock wants 350 · 1.1057 = 387 mm²/s whatever the day. A bottle has that at 8 °C if it is
// labelled 387/1.4278 = 271 cSt, and at 38 °C if 387/0.7817 = 495 cSt. Damping goes with ρ ν, and the oil is 1.1 % denser at 8 °C and 1.6 % lighter at 38 °C than at 20 °C
// (9.121e-4 a kelvin): 268 and 503 cSt, within a percent for what inertia adds.

describe('order-plan', () => {
  test('the oil wanted is by Barry a 268 cSt bottle cold and a 503 cSt bottle hot; a shop without them says so', () => {
    const { answer } = pageOf(orderPlan, car([100, 150]));
    expect(answer).toMatch(
      /^No bottle and no blend of two keeps any build within 10 % from 8 °C to 38 °C\./u,
    );
    const said =
      /front: nothing serves it at any temperature\. A silicone bottle of (\d+) cSt to (\d+) cSt \(at 25 °C\) would; what there is runs from 100 cSt to 150 cSt\./u.exec(
        answer,
      );
    expect(Math.abs(Number(said?.[1]) / 268 - 1)).toBeLessThan(0.01);
    expect(Math.abs(Number(said?.[2]) / 503 - 1)).toBeLessThan(0.01);
  });

  test('serves what it can and names the rest: a shop that ends at 350 leaves the hot afternoon', () => {
    const { answer } = pageOf(orderPlan, car([250, 350]));
    expect(answer).toMatch(
      /^Buy shop 250 and shop 350 \(12\.00 EUR\): alone or blended they keep what can be served within \d+ %/u,
    );
    expect(answer).toMatch(/front: nothing serves it at .*38 °C\. A silicone bottle of \d+ cSt to 50\d cSt/u);
  });

  test('hotter oil takes the thicker bottle, colder the thinner', () => {
    const table = tableOf(pageOf(orderPlan, car([270, 490]), { blend: '10' }), 'fills-1');
    expect(table.columns.map(({ label }) => label).slice(1, 3)).toEqual(['shop 270', 'shop 490']);
    const thicker = table.rows.map((row) => Number(row[2] ?? 0));
    expect(thicker[0]).toBe(0);
    expect(thicker.at(-1)).toBeGreaterThanOrEqual(9);
    for (let i = 1; i < thicker.length; i++) expect(thicker[i]).toBeGreaterThanOrEqual(thicker[i - 1] ?? 0);
  });

  test('what is at hand is not bought, and costs nothing', () => {
    const { answer } = pageOf(orderPlan, car([150, 800], [270, 490]), { fills: '1' });
    expect(answer).toMatch(
      /^Buy nothing: own 270 full and own 490 full that you have keeps? the shock within/u,
    );
    const half = pageOf(orderPlan, car([490], [270]), { fills: '1' });
    expect(half.answer).toMatch(
      /^Buy shop 490 \(9\.80 EUR\), and with own 270 full that you have, alone or blended they keep the shock/u,
    );
  });

  test('counts the oil poured to the rim, not what stays: π/4 · 12² · 36 mm − 0.3 ml = 3.771 ml a shock', () => {
    const table = tableOf(pageOf(orderPlan, car([270, 490]), { fills: '10' }), 'order');
    const used = table.columns.findIndex(({ label }) => label === 'Used');
    const total = table.rows.reduce((sum, row) => sum + Number(row[used]), 0);
    // Two shocks, ten fills; to the rim, without the cap.
    expect(total * 1e6).toBeCloseTo(20 * ((Math.PI / 4) * 144e-3 * 36 - 0.3), 3);
  });

  test('buys as many bottles as the oil takes, rounded up, and names the price of them all', () => {
    // 30 fills of two shocks are 226 ml.
    const page = pageOf(orderPlan, car([350]), { fills: '30', coldest: '19 °C', hottest: '21 °C' });
    expect(page.answer).toMatch(/^Buy 4 × shop 350 \(28\.00 EUR\):/u);
  });

  test('a label that may be anything is said', () => {
    const labelled = car([270]).replace(/viscosity: 270 cSt, at: 25 °C/u, 'trade-weight: 25');
    const page = pageOf(orderPlan, labelled);
    // Typical silicone of 25 wt: 220 to 310 cSt (common practice, no source).
    expect(JSON.stringify(page.blocks)).toContain(
      'is sold by a label and may hold anything from 220 cSt to 310 cSt (at 25 °C)',
    );
  });

  test.each([
    ['order-plan', orderPlan],
    ['day-plan', dayPlan],
  ])('%s says which bottles it takes at the middle of their label', (_, notebook) => {
    const said = (text: string) => JSON.stringify(pageOf(notebook, text).blocks);
    const labelled = car([270, 490]).replace(/viscosity: 270 cSt, at: 25 °C/u, 'trade-weight: 25');
    expect(said(labelled)).toContain(
      // 25 wt: 220 to 310 cSt about 270 (common practice, no source): 270/220 = 1.227.
      'Taken at the middle of what a label leaves open, alone and in blends: shop 270 (up to 23 % off).',
    );
    expect(said(car([270, 490]))).not.toContain('Taken at the middle');
  });

  test('passes its own checks on the demo, and never says undefined', () => {
    const page = pageOf(orderPlan, demo);
    expect(pagePassed(page)).toBe(true);
    expect(JSON.stringify(page)).not.toMatch(/undefined|NaN/u);
  });
});

describe('day-plan', () => {
  test('the thin bottle in the morning, the thick one in the afternoon', () => {
    const page = pageOf(dayPlan, car([270, 350, 490]), { worthwhile: '15 %', blend: '1' });
    expect(page.answer).toMatch(/^front: start on shop 270, change to shop (350|490) at /u);
    expect(page.answer).toContain('change to shop 490 at');
    expect(page.answer.indexOf('shop 270')).toBeLessThan(page.answer.indexOf('shop 490'));
    expect(pagePassed(page)).toBe(true);
  });

  test('left alone: by how much and which way, worked out force by force', () => {
    const text = car([270]);
    const page = pageOf(dayPlan, text, { worthwhile: '12 %', blend: '1' });
    const parts = readParts(text);
    const [build] = parts.builds;
    if (build === undefined) throw new Error('no build');
    const { damper } = assembleShock(build);
    const force = (label: number, celsius: number, speed: number) =>
      damperForce(
        damperModel(
          damper,
          fluidAt(
            createOil({
              base: 'silicone',
              viscosity: {
                kind: 'silicone',
                point: { temperature: 298.15, kinematicViscosity: label * 1e-6 },
              },
            }),
            273.15 + celsius,
          ),
        ),
        { speed, position: 0.012 },
      ).dampingForce;
    const said = /left alone it would be (\d+) % too (soft|hard) at 15:00 \(38 °C\)/u.exec(page.answer);
    expect(said?.[2]).toBe('soft');
    const values = readParameterValues(dayPlan.parameters, {}, parts);
    const speeds = [values.slow, values.middle, values.fast, -values.slow, -values.middle];
    const mean = Math.exp(
      speeds.reduce((sum, speed) => sum + Math.log(force(270, 38, speed) / force(350, 20, speed)), 0) /
        speeds.length,
    );
    expect(Number(said?.[1])).toBe(Math.round(100 * (1 - mean)));
    expect(page.answer).toContain('Nothing on the shelf comes nearer than');
  });

  test('the picture says when the shock left alone is furthest off, and spans what is in it', () => {
    const page = pageOf(dayPlan, car([270]), { worthwhile: '12 %', blend: '1' });
    const [figure] = pageFigures(page);
    // 270 cSt at 8 °C has what 350 has at 20 °C but for a percent; 30 K later it has half of it.
    expect(figure?.alt).toMatch(/Left alone, the shock is \d+ % too soft at 15:00 \(38 °C\);/u);
    const said = Number(/(\d+) % too soft/u.exec(figure?.alt ?? '')?.[1]);
    const { yLow, yHigh } = figure?.drawings.wide.signals ?? {};
    expect(Number(yLow)).toBeLessThanOrEqual(100 - said);
    expect(Number(yLow)).toBeGreaterThan(90 - said);
    expect(Number(yHigh)).toBeGreaterThan(112);
    expect(Number(yHigh)).toBeLessThan(130);
  });

  test('holds between the readings: a peak of mismatch between two of them is looked at', () => {
    // 8 to 38 °C in seven hours; the change comes at a time that is no reading.
    const page = pageOf(dayPlan, car([270, 490]), { worthwhile: '20 %', blend: '1' });
    const times = tableOf(page, 'day-1').rows.map(([time]) => time);
    expect(times).toHaveLength(4);
    expect(times.filter((time) => !['08:00', '11:00', '15:00'].includes(String(time)))).toHaveLength(1);
  });

  test('a day without a change is left alone', () => {
    const even = car([350])
      .replace('temperature: 8 °C', 'temperature: 19 °C')
      .replace('temperature: 38 °C', 'temperature: 21 °C');
    expect(pageOf(dayPlan, even).answer).toContain(
      'front: start on shop 350 and leave it: left alone it would be',
    );
  });

  test('plans every wanted build of the car', () => {
    const { answer } = pageOf(dayPlan, demo);
    for (const name of ['buggy front', 'buggy rear', 'big buggy front'])
      expect(answer).toContain(`${name}: start on`);
    expect(answer).toContain('too soft at 14:30 (38 °C)');
  });
});
