import { describe, expect, test } from 'vitest';
import { allBlocks } from '../../lib/page/index.js';
import { notebook } from '../../notebooks/match.js';
import { changedFile, files, fileTexts, pageOf, rowOf, wordsOf } from './answers.js';
import { bruteLanding, type Car } from './brute-landing.js';
import { back, buildOf, likely, plain, third } from './landing-cases.js';

describe('where the file or the shock has no answer', () => {
  test('a guessed car: said, with the oils of both ends, which by brute force land as far in each', () => {
    const page = pageOf(notebook, files.twoCars, { now: '34 °C', ...back });
    const [, low, high] =
      /buggy front has no "corner"; the ends of the guess ask for (\d+) cSt to (\d+) cSt\.$/u.exec(
        page.answer,
      ) ?? [];
    const build = buildOf(files.twoCars, 'buggy front');
    const off = (label: number, car: Car) =>
      Math.abs(
        bruteLanding(build, 307.15, 0.1, car, plain(label)).travel /
          bruteLanding(build, 292.15, 0.1, car).travel -
          1,
      );
    const ends: readonly Car[] = [likely, { mass: 0.25, ratio: 0.8 }, { mass: 0.9, ratio: 0.6 }];
    for (const label of [Number(low), Number(high)])
      expect(Math.min(...ends.map((car) => off(label, car)))).toBeLessThan(0.004);
    expect(Number(low)).toBeLessThan(Number(high));
    expect(pageOf(notebook, files.demo, back).answer).not.toContain('guess');
  });

  test('a bare cap that locks on every oil when warm', () => {
    expect(
      pageOf(notebook, files.twoCars, {
        now: '34 °C',
        build: 'buggy rear',
        piston: 'rear two chamfered',
        shock: 'buggy rear',
        ...back,
      }).answer,
    ).toMatch(
      /^No oil lets rear two chamfered in buggy rear at 34 °C land like buggy rear from 100 mm, 17\.\d mm in: its gas has no room for shaft and cavity on the way\./u,
    );
  });

  test('holes that even the thinnest oil hardly passes', () => {
    const narrow = changedFile(
      fileTexts.demo,
      '{ count: 4, diameter: 1.3 mm }]\n  - name: two 1.5',
      '{ count: 1, diameter: 0.4 mm }]\n  - name: two 1.5',
    );
    const { answer } = pageOf(notebook, narrow, { piston: 'four 1.3 thick', drop: '300 mm', ...back });
    const [, wanted, reached] =
      /from 300 mm, ([\d.]+) mm in: even on the thinnest it stops ([\d.]+) mm in\. Another piston is needed, with more or wider holes\.$/u.exec(
        answer,
      ) ?? [];
    expect(Number(reached)).toBeLessThan(Number(wanted));
  });

  test('a landing onto the stop says that the stop hides the oil', () => {
    const words = (drop: string) => wordsOf(pageOf(notebook, files.demo, { drop, ...back }));
    expect(words('400 mm')).toContain(
      'buggy front touches its bump stop in this landing, and the stop hides what the oil does: choose a lower drop.',
    );
    expect(words('100 mm')).not.toContain('hides what the oil does');
  });

  test('without a spring the curve comes back all the same, and the landing names the line to add', () => {
    const bare = { ...third, builds: third.builds.map(({ spring: _, ...build }) => build) };
    const page = pageOf(notebook, bare, { now: '30 °C' });
    expect(page.answer).toContain('only comes back on a');
    expect(wordsOf(page)).toMatch(
      /How it lands is not told: spring must be named in the build "only".*rate: 0\.60 N\/mm/u,
    );
    expect(() => pageOf(notebook, bare, { now: '30 °C', ...back })).toThrow(
      /spring must be named in the build "only"/u,
    );
  });

  test('where the curve comes back the page says how it lands: on its own oil, warmer, it goes in further and pushes less', () => {
    const page = pageOf(notebook, files.demo, { now: '38 °C' });
    const [liked = 0, , pushed = 0] = rowOf(page, 'landings', 'as you like it, on clear 350 at 20 °C').map(
      Number,
    );
    const [warm = 0, , push = 0] = rowOf(page, 'landings', 'clear 350, nothing done').map(Number);
    const brute = bruteLanding(buildOf(files.demo, 'buggy front'), 311.15, 0.1, { mass: 0.34, ratio: 0.72 });
    expect(Math.abs(warm / brute.travel - 1)).toBeLessThan(0.005);
    expect(Math.abs(push / brute.push - 1)).toBeLessThan(0.005);
    expect(warm).toBeGreaterThan(liked);
    expect(push).toBeLessThan(pushed);
    expect(allBlocks(page).filter((block) => block.kind === 'table' && block.id === 'landings')).toHaveLength(
      1,
    );
  });
});
