import { describe, expect, test } from 'vitest';
import { type Page, pagePassed } from '../../lib/page/index.js';
import { type Build, type Parts, readParts } from '../../lib/parts/index.js';
import { notebook } from '../../notebooks/what-to-drill.js';
import { files, fileTexts, pageOf, rowOf, tableOf, wordsOf } from './answers.js';
import { bruteLanding, type Car } from './brute-landing.js';

const back = { back: 'same landing' } as const;
const third = readParts(`${fileTexts.smallest}
springs: [{ name: soft, rate: 0.55 N/mm, free-length: 42 mm }]
builds:
  - name: only
    shock: front
    piston: three holes
    oil: bottle 450
    spring: soft
    corner: { mass: 400 g, motion-ratio: 0.65 }
`);

const cases: readonly (readonly [string, Parts, Readonly<Record<string, string>>, number, Car])[] = [
  ['demo', files.demo, {}, 293.15, { mass: 0.34, ratio: 0.72 }],
  [
    'demo, from 200 mm',
    files.demo,
    { drop: '200 mm', slowHarder: '40 %' },
    293.15,
    { mass: 0.34, ratio: 0.72 },
  ],
  ['two cars', files.twoCars, {}, 292.15, { mass: 0.45, ratio: 0.7 }],
  ['smallest with a spring', third, {}, 293.15, { mass: 0.4, ratio: 0.65 }],
];

/** The build with the piston and the oil that an answer names; straight holes, or reamed as it says. */
function drilled({ answer }: Page, build: Build, { oils }: Parts): Build {
  const [, count = '', narrow = '', wide, side, thickness = '', fill = ''] =
    /drill (one hole|\d+ holes) of ([\d.]+) mm(?:, reamed to ([\d.]+) mm at the (shaft|blind) side,)? into a piston ([\d.]+) mm thick and fill (.*?): at/u.exec(
      answer,
    ) ?? [];
  const oil = oils.find(({ name }) => name === fill);
  if (oil === undefined) throw new Error(`no oil in "${answer}"`);
  const mm = (text: string) => Number(text) * 1e-3;
  const [blind, shaft] =
    wide === undefined
      ? [mm(narrow), mm(narrow)]
      : side === 'shaft'
        ? [mm(narrow), mm(wide)]
        : [mm(wide), mm(narrow)];
  const { diameter, eccentricity } = build.piston.piston;
  const hole = {
    count: count === 'one hole' ? 1 : Number.parseInt(count, 10),
    diameter: blind,
    ...(wide === undefined ? {} : { shape: { kind: 'conical', shaftSideDiameter: shaft } as const }),
  };
  return {
    ...build,
    oil,
    piston: { name: 'new', piston: { diameter, eccentricity, thickness: mm(thickness), holes: [hole] } },
  };
}

const first = ({ builds: [build] }: Parts): Build => {
  if (build === undefined) throw new Error('no build');
  return build;
};

describe('other slow damping and the same landing', () => {
  test.each(cases)(
    '%s: the piston that is named lands by brute force as the answer says',
    (_, parts, texts, at, car) => {
      const page = pageOf(notebook, parts, { ...texts, ...back });
      const drop = Number.parseFloat(texts['drop'] ?? '100 mm') / 1e3;
      const build = first(parts);
      const liked = bruteLanding(build, at, drop, car, build.wanted?.oil);
      const now = bruteLanding(drilled(page, build, parts), at, drop, car);
      const [, travel, apart = '0', which, push, more = '0', how] =
        /it goes in ([\d.]+) mm, (?:([\d.]+) mm )?(further than|less far than|as far as) wanted.*?, its shock pushing with ([\d.]+) N at most, (?:(\d+) % )?(harder than|softer than|as hard as) before/u.exec(
          page.answer,
        ) ?? [];
      expect(Math.abs(Number(travel) / (1e3 * now.travel) - 1)).toBeLessThan(0.015);
      expect(Math.abs(Number(push) / now.push - 1)).toBeLessThan(0.01);
      // To the tenth that is printed, and what brute force is off.
      expect(Math.abs(Number(apart) - 1e3 * Math.abs(now.travel - liked.travel))).toBeLessThan(0.1);
      expect(Math.abs(Number(more) - 100 * Math.abs(now.push / liked.push - 1))).toBeLessThan(1);
      if (which !== 'as far as')
        expect(which).toBe(now.travel > liked.travel ? 'further than' : 'less far than');
      if (how !== 'as hard as') expect(how).toBe(now.push > liked.push ? 'harder than' : 'softer than');
      expect(pagePassed(page)).toBe(true);
      expect(JSON.stringify(page)).not.toMatch(/NaN|undefined|Infinity/u);
    },
  );

  test('as it is when slow: the piston one has, which lands as far and as hard', () => {
    const { answer } = pageOf(notebook, files.demo, { slowHarder: '0 %', ...back });
    expect(answer).toContain(
      'For buggy front as it is at 30 mm/s and landing as it does, drill 2 holes of 1.7 mm into a piston 2.5 mm thick and fill clear 350',
    );
    expect(answer).toContain('as far as wanted');
    expect(answer).toContain('as hard as before');
  });

  test('none of the robust designs of the table is nearer in slow force and, five times, in travel', () => {
    const page = pageOf(notebook, files.demo, back);
    const wanted = Number(rowOf(page, 'landings', 'buggy front on clear 350 at 20 °C')[0]);
    const designs = tableOf(page, 'designs').rows.filter(([name]) =>
      /^\d+: .*\(robust\)$/u.test(String(name)),
    );
    const ranked = designs
      .map(([name, slow]) => {
        const [number = ''] = /^\d+/u.exec(String(name)) ?? [];
        const travel = Number(rowOf(page, 'landings', `design ${number}`)[0]);
        return { name: String(name), off: Math.max(Number(slow), 5 * Math.abs(travel / wanted - 1)) };
      })
      .sort((a, b) => a.off - b.off);
    expect(ranked.length).toBeGreaterThan(1);
    const [, count, size] = /(\d+) × ([\d.]+) mm/u.exec(ranked[0]?.name ?? '') ?? [];
    expect(page.answer).toContain(`drill ${count} holes of ${size} mm`);
  });

  test('every control of the middle speed still tells something: what is wanted there stands beside what came of it', () => {
    const forces = (texts: Readonly<Record<string, string>>) =>
      tableOf(pageOf(notebook, files.demo, { ...back, ...texts }), 'forces').rows.map((row) =>
        row.map(String),
      );
    const plain = forces({ middleHarder: '0 %' });
    // At what the shock goes in when it lands, at the slow and at the middle speed, both ways.
    expect(plain).toHaveLength(6);
    const at = (rows: readonly (readonly string[])[], way: string, speed = '300 mm/s') =>
      (rows.find(([name]) => name === `${way}, ${speed}`) ?? []).slice(1).map(Number);
    // In its own oil as warm as it feels right the build makes what is wanted of it, 0 % harder.
    for (const way of ['Compression', 'Rebound'])
      expect(at(plain, way)[0]).toBeCloseTo(at(plain, way)[2] ?? 0, 9);
    const harder = forces({ middleHarder: '50 %' });
    for (const way of ['Compression', 'Rebound']) {
      expect((at(harder, way)[0] ?? 0) / (at(plain, way)[0] ?? 0)).toBeCloseTo(1.5, 9);
      expect(at(harder, way).slice(1)).toEqual(at(plain, way).slice(1));
    }
    const given = forces({ middleCompression: '12 N', middleRebound: '7 N' });
    expect([at(given, 'Compression')[0], at(given, 'Rebound')[0]]).toEqual([12, 7]);
    // Faster means more force, and the row says its speed.
    const faster = at(forces({ middle: '400 mm/s' }), 'Compression', '400 mm/s');
    expect(faster[1]).toBeGreaterThan(at(plain, 'Compression')[1] ?? Number.NaN);
    // What is asked for does not change with it.
    expect(pageOf(notebook, files.demo, { ...back, middleHarder: '50 %' }).answer).toBe(
      pageOf(notebook, files.demo, back).answer,
    );
  });

  test('where the curve is asked for, the design that is named lands in the table: softer at the middle speed, it goes in further', () => {
    const rows = tableOf(
      pageOf(notebook, files.demo, { slowHarder: '-20 %', middleHarder: '-30 %' }),
      'landings',
    ).rows;
    expect(rows).toHaveLength(2);
    expect(Number(rows[1]?.[1])).toBeGreaterThan(Number(rows[0]?.[1]));
    expect(Number(rows[1]?.[3])).toBeLessThan(Number(rows[0]?.[3]));
  });

  test('without a spring: the lines to add, and the curve all the same', () => {
    expect(wordsOf(pageOf(notebook, files.smallest))).toMatch(
      /How it lands is not told: spring must be named in the build "front, three holes"/u,
    );
    expect(() => pageOf(notebook, files.smallest, back)).toThrow(/spring must be named/u);
  });
});
