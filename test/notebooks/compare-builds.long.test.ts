import { describe, expect, it } from 'vitest';
import { type Page, pagePassed } from '../../lib/page/index.js';
import { readParts } from '../../lib/parts/index.js';
import { overFirst } from '../../notebooks/compare-builds/tables.js';
import { notebook } from '../../notebooks/compare-builds.js';
import { notebook as compareOils } from '../../notebooks/compare-oils.js';
import { notebook as landing } from '../../notebooks/landing.js';
import { changedFile, files, fileTexts, numbersIn, pageOf, rowOf, tableOf, wordsOf } from './answers.js';

const gravity = 9.80665;
const numberOf = (cell: unknown): number => Number(/^−?-?[\d.]+/u.exec(String(cell))?.[0].replace('−', '-'));
/** Both cells of a row as numbers. */
const two = (page: Page, table: string, row: string) =>
  rowOf(page, table, row).slice(0, 2).map(numberOf) as unknown as readonly [number, number];

describe('two builds side by side', () => {
  it('ride frequency and damping ratio by the formulas of one mass on a spring (Rao, Mechanical Vibrations, Eqs. 2.65, 2.66), by hand', () => {
    const page = pageOf(notebook, files.demo);
    // R/(2π) √(k/m): 0.72, 600 N/m, 0.340 kg; 0.68, 360 N/m, 0.460 kg.
    expect(two(page, 'ride', 'Ride frequency')).toEqual([4.81, 3.03]);
    // c R / (2 √(k m)) with the damping of the page's own table: 1.11 N and 1.26 N at 30 mm/s.
    const [front, rear] = two(page, 'forces', 'Rebound, 30 mm/s');
    const [ratioFront, ratioRear] = two(page, 'ride', 'Damping ratio, rebound 30 mm/s');
    expect(ratioFront).toBeCloseTo(((front / 0.03) * 0.72) / (2 * Math.sqrt(600 * 0.34)), 1);
    expect(ratioRear).toBeCloseTo(((rear / 0.03) * 0.68) / (2 * Math.sqrt(360 * 0.46)), 1);
    expect(page.answer).toContain('buggy rear swings 37 % slower than buggy front');
    expect(rowOf(page, 'ride', 'Ride frequency')[2]).toBe('−37 %');
  });

  it('the collar where gas gives no push: load over rate less the place, by hand', () => {
    const open = changedFile(
      fileTexts.demo,
      /compensator: \{ kind: air-pocket \}\n(.*)drawn-off: 0\.3 ml, /u,
      'compensator: { kind: vented-bladder, volume: 0.5 ml, stiffness: 0.01 kPa/ml }\n$1',
    );
    const page = pageOf(notebook, open);
    expect(two(page, 'push', 'Shaft fully in')[0]).toBe(0);
    // Sag: 0.340 kg · g / 0.72 / 600 N/m = 7.718 mm; wanted 30 % of 24 mm = 7.2 mm.
    const sag = (1e3 * 0.34 * gravity) / 0.72 / 600;
    expect(two(page, 'ride', 'Shaft in, collar just touching')[0]).toBeCloseTo(sag, 1);
    expect(two(page, 'ride', 'Shaft wanted in, 30 %')[0]).toBe(7.2);
    expect(two(page, 'ride', 'Collar must press')[0]).toBeCloseTo(sag - 7.2, 1);
    expect(two(page, 'ride', 'Spring is then long')[0]).toBeCloseTo(42 - sag, 1);
    expect(two(page, 'ride', 'Wheel can drop from there')[0]).toBe(7.2 / 0.72);
    // Further in than the spring alone lets it: the collar is backed off.
    const low = pageOf(notebook, open, { sag: '40 %' });
    expect(two(low, 'ride', 'Collar must press')[0]).toBeCloseTo(sag - 9.6, 1);
    expect(low.answer).toContain(`backed off so that its spring is ${(9.6 - sag).toFixed(1)} mm loose`);
    expect(pageOf(notebook, open, { sag: '25 %' }).answer).toContain(`pressed ${(sag - 6).toFixed(1)} mm`);
  });

  it('with gas that pushes out, the collar presses less and the shaft rests further out; the program of landings agrees', () => {
    const page = pageOf(notebook, files.demo);
    expect(two(page, 'ride', 'Shaft in, collar just touching')[0]).toBeLessThan(
      (1e3 * 0.34 * gravity) / 0.72 / 600,
    );
    expect(pagePassed(page)).toBe(true);
    expect(
      page.blocks.some((block) => block.kind === 'check' && block.claim.includes('program of landings')),
    ).toBe(true);
  });

  it('each build is closed as warm as its own file says, whichever stands first, and as the bench where that is moved: one gas for its push, its rest and its landing', () => {
    const text = fileTexts.demo.replace(
      'closing: { shaft: 14 mm, temperature: 20 °C',
      'closing: { shaft: 14 mm, temperature: −5 °C',
    );
    expect(text).not.toBe(fileTexts.demo);
    const [unlike, alike] = [readParts(text), readParts(fileTexts.demo)];
    const turned = { ...unlike, builds: unlike.builds.slice(0, 2).reverse() };
    const names = unlike.builds.slice(0, 2).map(({ name }) => name);
    const page = pageOf(notebook, unlike, { builds: names });
    const other = pageOf(notebook, turned, { builds: names.toReversed() });
    const cells = (of: Page) =>
      (['push', 'ride', 'landing'] as const).flatMap((id) =>
        tableOf(of, id).rows.map(([name, first, second]) => ({
          name: `${id}: ${String(name)}`,
          first,
          second,
        })),
      );
    let compared = 0;
    for (const { name, first, second } of cells(page)) {
      const turnedRow = cells(other).find((row) => row.name === name);
      // The speeds of a row are those of the first build.
      if (turnedRow === undefined) continue;
      expect([turnedRow.second, turnedRow.first], name).toEqual([first, second]);
      compared++;
    }
    expect(compared).toBeGreaterThan(9);
    expect([page, other].map(pagePassed)).toEqual([true, true]);
    // Closed cold, the oil grows into its gas and the gas warms: it pushes harder at 20 °C, so that the collar presses less.
    const same = pageOf(notebook, alike, { builds: names });
    const titleOf = (one: Page) =>
      one.blocks.flatMap((block) => (block.kind === 'table' && block.id === 'push' ? [block.title] : []));
    expect(titleOf(page)).toEqual(['Static push, no spring, each as warm as it was closed, 20 °C and −5 °C']);
    expect(titleOf(same)).toEqual(['Static push, no spring, at 20 °C']);
    expect(two(page, 'ride', 'Collar must press')[1]).toBeLessThan(two(same, 'ride', 'Collar must press')[1]);
    // The bench moved to where both were closed in the other file closes both there.
    const [cold, warm] = ['0 °C', '40 °C'].map((bench) => pageOf(notebook, unlike, { builds: names, bench }));
    if (cold === undefined || warm === undefined) throw new Error('no page');
    for (const side of [0, 1] as const) {
      expect(two(cold, 'landing', 'Goes in')[side]).toBeLessThan(two(warm, 'landing', 'Goes in')[side]);
      expect(two(cold, 'ride', 'Collar must press')[side]).toBeLessThan(
        two(warm, 'ride', 'Collar must press')[side],
      );
    }
    expect(pageOf(notebook, unlike, { builds: names, bench: '40 °C' })).toEqual(
      pageOf(notebook, alike, { builds: names, bench: '40 °C' }),
    );
  });

  it('a corner that the file does not say is an interval of guesses, worked out at its ends by hand', () => {
    const page = pageOf(notebook, files.twoCars);
    // 0.48 N/mm: 0.7 and 0.45 kg; 0.6 and 0.9 kg; 0.8 and 0.25 kg.
    const hertz = (ratio: number, mass: number) =>
      ((ratio * Math.sqrt(480 / mass)) / (2 * Math.PI)).toPrecision(3);
    expect(rowOf(page, 'ride', 'Ride frequency')[0]).toBe(
      `${hertz(0.7, 0.45)} Hz (${hertz(0.6, 0.9)} to ${hertz(0.8, 0.25)})`,
    );
    expect(rowOf(page, 'ride', 'Wheel can drop from there')[0]).toBe('add its corner');
    expect(page.answer).not.toContain('swing');
    expect(page.answer).not.toContain('collar');
    expect(wordsOf(page)).toContain('buggy front: "corner"');
    const said = changedFile(
      fileTexts.twoCars,
      /(spring: soft\n {4}quantity: 2)/u,
      '$1\n    corner: { mass: 450 g, motion-ratio: 0.7 }',
    );
    const known = pageOf(notebook, said);
    expect(rowOf(known, 'ride', 'Ride frequency')[0]).toBe(`${hertz(0.7, 0.45)} Hz`);
    expect(wordsOf(known)).not.toContain('buggy front: "corner"');
    expect(known.answer).toContain('buggy front rests 6.3 mm in with its collar pressed');
  });

  it('what there is no number for says what to add, on the smallest file', () => {
    const page = pageOf(notebook, files.smallest);
    expect(page.answer).toMatch(
      /front, three holes damps with .* less than front, three holes on bottle 450 with/u,
    );
    expect(page.answer).not.toMatch(/rests|swings|Dropped/u);
    for (const key of ['"spring"', '"corner"', '"bottle"', '"compensator"', '"lengths"'])
      expect(wordsOf(page)).toContain(key);
    expect(rowOf(page, 'day', 'Cost of a fill')).toEqual(['add its bottle', 'add its bottle', '']);
    // Slow: d³/4 for each of three holes against (32 L/d + 6π) ν ρ, with what goes round the piston; 2.4 mm, 1.4 mm, 450 cSt at 25 °C thinner by 10 %
    // cold. The page checks it; here only that thicker is more.
    const [thin, thick] = two(page, 'forces', 'Rebound, 30 mm/s');
    expect(thick).toBeGreaterThan(1.3 * thin);
    expect(rowOf(page, 'forces', 'Rebound, 30 mm/s')[2]).toBe(`+${Math.round(100 * (thick / thin - 1))} %`);
    expect(pagePassed(page)).toBe(true);
  });

  it('which damps more and which less is that of the table, whichever comes first', () => {
    const forward = pageOf(notebook, files.demo, { builds: ['buggy front', 'big buggy front'] });
    const backward = pageOf(notebook, files.demo, { builds: ['big buggy front', 'buggy front'] });
    const pattern = /damps with ([\d.]+) N, ([\d.]+) % (?:more|less) than .* with ([\d.]+) N\./u;
    const [one = 0, part = 0, other = 0] = numbersIn(forward.answer, pattern);
    expect(one).toBeLessThan(other);
    expect(forward.answer).toContain('% less than big buggy front');
    expect(part).toBeCloseTo(100 * (1 - one / other), 0);
    expect(backward.answer).toContain('% more than buggy front');
    const swing = (page: Page) => two(page, 'ride', 'Ride frequency');
    expect(forward.answer).toContain(swing(forward)[1] > swing(forward)[0] ? 'faster' : 'slower');
    expect(backward.answer).toContain(swing(backward)[1] > swing(backward)[0] ? 'faster' : 'slower');
    expect(swing(forward)[0]).not.toBe(swing(forward)[1]);
  });

  it('cold damps more than hot, lost is what is missing of cold', () => {
    const page = pageOf(notebook, files.demo);
    const cold = two(page, 'day', 'Rebound 300 mm/s at 8 °C');
    const hot = two(page, 'day', 'Rebound 300 mm/s at 38 °C');
    const lost = two(page, 'day', 'Lost from cold to hot');
    for (const side of [0, 1] as const) {
      expect(hot[side]).toBeLessThan(cold[side]);
      expect(lost[side]).toBeCloseTo(100 * (1 - hot[side] / cold[side]), 0);
    }
  });

  it('a fill costs what its share of a bottle costs, and is that of the page of oils', () => {
    const page = pageOf(notebook, files.demo);
    const [front, rear] = two(page, 'day', 'Oil for a fill');
    const cost = two(page, 'day', 'Cost of a fill');
    expect(cost[0]).toBeCloseTo((7.9 * front) / 60, 2);
    expect(cost[1]).toBeCloseTo((7.9 * rear) / 60, 2);
    const [needed] = rowOf(pageOf(compareOils, files.demo), 'order', 'clear 350');
    expect(front).toBeCloseTo(1e6 * Number(needed), 2);
  });

  it('lands as on the page of landings', () => {
    const page = pageOf(notebook, files.demo, { drop: '150 mm' });
    const { answer } = pageOf(landing, files.demo, { drop: '150 mm' });
    const [travel, push] = ['Goes in', 'Shock pushes at most'].map((row) => rowOf(page, 'landing', row)[0]);
    expect(answer).toContain(`goes in ${travel} of 24 mm`);
    expect(answer).toContain(`pushes out with ${push} at most`);
    expect(page.answer).toContain(`buggy front goes in ${travel}`);
  });

  it('a value that is all but nothing is not compared', () => {
    expect(overFirst(1e-320, 2)).toBe('');
    expect(overFirst(2, 0)).toBe('');
    expect(overFirst(2, 3)).toBe('+50 %');
    expect(overFirst(3, 2)).toBe('−33 %');
    expect(overFirst(2, 2)).toBe('same');
  });

  it('a single build on the only oil of a file is compared with itself on the next piston that fits', () => {
    const oneOil = fileTexts.smallest.replace(/.*bottle 450.*\n/u, '');
    const four = 'thickness: 2.4 mm, holes: [{ count: 4, diameter: 1.4 mm }] }\n';
    const wide = `  - { name: too wide, diameter: 15.9 mm, ${four}`;
    const fitting = ['four holes', 'another'].map(
      (name) => `  - { name: ${name}, diameter: 11.92 mm, ${four}`,
    );
    const page = (more: string) =>
      pageOf(notebook, readParts(oneOil.replace('shocks:', `${more}shocks:`)), {
        builds: 'front, three holes',
      });
    const found = page(`${wide}${fitting.join('')}`);
    expect(found.answer).toMatch(
      /front, three holes damps with .* more than front, three holes with four holes with/u,
    );
    // A fourth hole of the same size lets a third more through: three quarters of the force, less what goes round.
    const [three, other] = two(found, 'forces', 'Rebound, 30 mm/s');
    expect(other / three).toBeGreaterThan(0.72);
    expect(other / three).toBeLessThan(0.82);
    expect(() => page(wide)).toThrow('two builds of the parts file, or a second oil for the one it has');
  });

  it('refuses cold above hot and speeds that do not rise', () => {
    expect(() => pageOf(notebook, files.demo, { coldest: '40 °C' })).toThrow(
      'coldest must be at most the hottest, 38 °C',
    );
    expect(() => pageOf(notebook, files.demo, { slow: '400 mm/s' })).toThrow('slow must be below middle');
  });
});
