import { describe, expect, test } from 'vitest';
import { type Page, pagePassed } from '../../lib/page/index.js';
import type { Parts } from '../../lib/parts/index.js';
import { landingsOf } from '../../notebooks/match/landings.js';
import { notebook } from '../../notebooks/match.js';
import { files, pageOf, rowOf, tableOf } from './answers.js';
import { bruteLanding, type Car } from './brute-landing.js';
import { back, buildOf, likely, plain, third } from './landing-cases.js';

const cases: readonly (readonly [string, Parts, Readonly<Record<string, string>>, string, Car])[] = [
  ['demo, warm', files.demo, { now: '38 °C' }, 'buggy front', { mass: 0.34, ratio: 0.72 }],
  [
    'demo, cold, other holes',
    files.demo,
    { now: '8 °C', piston: 'four 1.3 thick' },
    'buggy front',
    { mass: 0.34, ratio: 0.72 },
  ],
  ['two cars, front', files.twoCars, { now: '34 °C' }, 'buggy front', likely],
  [
    'two cars, truck on other holes',
    files.twoCars,
    { now: '34 °C', build: 'truck', piston: 'truck six 1.4', shock: 'truck' },
    'truck',
    likely,
  ],
  ['smallest with a spring', third, { now: '30 °C', drop: '150 mm' }, 'only', { mass: 0.4, ratio: 0.65 }],
];

const labelIn = ({ answer }: Page): number => Number(/on a (\d+(?:\.\d+)?) cSt silicone/u.exec(answer)?.[1]);
const kelvin = (text = ''): number => 273.15 + Number.parseFloat(text);
const metres = (text = '100 mm'): number => Number.parseFloat(text) / 1e3;

describe('the oil of the same landing', () => {
  test.each(cases)(
    '%s: by brute force it goes in as far as the one that is liked, and pushes as the answer says',
    (_, parts, texts, name, car) => {
      const page = pageOf(notebook, parts, { ...texts, ...back });
      const build = buildOf(parts, name);
      const piston = parts.pistons.find((one) => one.name === (texts['piston'] ?? build.piston.name));
      if (piston === undefined) throw new Error('no piston');
      const drop = metres(texts['drop']);
      // The truck creeps in until it rests, as long as the page follows it.
      const followed = name === 'truck' ? 0.6 : 0.15;
      const liked = bruteLanding(
        build,
        build.wanted?.temperature ?? 293.15,
        drop,
        car,
        build.wanted?.oil,
        followed,
      );
      const on = (label: number) =>
        bruteLanding({ ...build, piston }, kelvin(texts['now']), drop, car, plain(label), followed);
      const found = on(labelIn(page));
      // A part in three hundred of travel is about a part in fifty of viscosity.
      expect(Math.abs(found.travel / liked.travel - 1)).toBeLessThan(0.004);
      expect(on(1.25 * labelIn(page)).travel).toBeLessThan(liked.travel);
      const [, travel, push = '', off = '', how, before] =
        /lands the same from [\d.]+ mm, ([\d.]+) mm in.*its shock pushes with ([\d.]+) N at most(?:, as hard as before|, (\d+) % (harder|softer) than the ([\d.]+) N before)/u.exec(
          page.answer,
        ) ?? [];
      expect(Math.abs(Number(travel) / (1e3 * liked.travel) - 1)).toBeLessThan(0.015);
      expect(Math.abs(Number(push) / found.push - 1)).toBeLessThan(0.01);
      expect(Math.abs(Number(before ?? push) / liked.push - 1)).toBeLessThan(0.01);
      expect(Math.abs(Number(off) - 100 * Math.abs(found.push / liked.push - 1))).toBeLessThan(1.2);
      if (how !== undefined) expect(how).toBe(found.push > liked.push ? 'harder' : 'softer');
      expect(pagePassed(page)).toBe(true);
      expect(JSON.stringify(page)).not.toMatch(/NaN|undefined|Infinity/u);
    },
  );

  test('warmer oil wants a thicker bottle, and holes that hold back more a thinner one', () => {
    const label = (texts: Readonly<Record<string, string>>) =>
      labelIn(pageOf(notebook, files.demo, { ...texts, ...back }));
    expect(label({ now: '38 °C' })).toBeGreaterThan(label({ now: '8 °C' }));
    expect(label({ now: '20 °C' })).toBeCloseTo(350, -1);
    expect(label({ now: '38 °C', piston: 'four 1.3 thick' })).toBeLessThan(label({ now: '38 °C' }));
  });

  test('the nearest bottle: a thinner one goes in further, a thicker one less far', () => {
    const said = (texts: Readonly<Record<string, string>>) => {
      const page = pageOf(notebook, files.demo, { ...texts, ...back });
      const [, bottle, number, off, which] =
        /nearest bottle, (\w+ (\d+)), it goes in (?:([\d.]+) mm )?(further|less far|as far)/u.exec(
          page.answer,
        ) ?? [];
      const [goesIn = 0] = rowOf(page, 'landings', bottle ?? '').map(Number);
      const [wanted = 0] = rowOf(page, 'landings', 'as you like it, on clear 350 at 20 °C').map(Number);
      return { page, number: Number(number), off: Number(off), which, goesIn, wanted };
    };
    const thin = said({ now: '38 °C' });
    expect(thin.number).toBeLessThan(labelIn(thin.page));
    expect(thin.which).toBe('further');
    expect(thin.off).toBeCloseTo(1e3 * (thin.goesIn - thin.wanted), 1);
    const thick = said({ now: '38 °C', piston: 'four 1.3 thin', drop: '200 mm' });
    expect(thick.number).toBeGreaterThan(labelIn(thick.page));
    expect(thick.which).toBe('less far');
    expect(thick.off).toBeCloseTo(1e3 * (thick.wanted - thick.goesIn), 1);
  });

  test('bottles of the table: none of the shop comes nearer to the landing than the first', () => {
    const { rows } = tableOf(pageOf(notebook, files.demo, { now: '38 °C', ...back }), 'landings');
    const wanted = Number(rows[0]?.[1]);
    const offs = rows.slice(2, 6).map((row) => Math.abs(Number(row[1]) - wanted));
    expect(offs).toEqual([...offs].sort((a, b) => a - b));
    const all = landingsOf({
      build: buildOf(files.demo, 'buggy front'),
      right: { oil: buildOf(files.demo, 'buggy front').oil, temperature: 293.15 },
      shock: buildOf(files.demo, 'buggy front').shock,
      piston: buildOf(files.demo, 'buggy front').piston,
      now: 311.15,
      drop: 0.1,
    });
    const shop = [...(files.demo.shop ?? []), ...files.demo.oils].map((oil) => {
      const landing = all.on(oil);
      return typeof landing === 'string' ? 1 : Math.abs(landing.outcome.largestTravel.value - wanted);
    });
    expect(offs[0]).toBeCloseTo(Math.min(...shop), 9);
  });

  test('a landing that was done is not done again', () => {
    const build = buildOf(files.demo, 'buggy front');
    const asked = {
      build,
      right: { oil: build.oil, temperature: 293.15 },
      shock: build.shock,
      piston: build.piston,
      now: 300.15,
      drop: 0.1,
    };
    const [one, other] = [landingsOf(asked), landingsOf(asked)];
    expect(other.liked).toBe(one.liked);
    expect(other.on(build.oil)).toBe(one.on(build.oil));
    expect(landingsOf({ ...asked, drop: 0.11 }).liked).not.toBe(one.liked);
    expect(landingsOf({ ...asked, now: 301.15 }).on(build.oil)).not.toBe(one.on(build.oil));
  });
});
