import { describe, expect, test } from 'vitest';
import type { Landed } from '../../notebooks/base/landed.js';
import { landingAnswer } from '../../notebooks/match/landing-words.js';
import type { MatchedFill } from '../../notebooks/match/matched.js';
import type { SameLanding } from '../../notebooks/match/same-landing.js';
import { files } from './answers.js';
import { buildOf } from './landing-cases.js';

// Every number is put in by hand: what is asked is which words go with it.
const build = buildOf(files.demo, 'buggy front');

/** As much of a landing as words need: how far in [mm], how hard it pushes [N]. */
const landing = (travel: number, push: number, bottoms = false) =>
  ({
    moving: { build },
    bottoms,
    outcome: { largestTravel: { value: travel / 1000 }, largestShockForce: { value: push } },
  }) as Landed;

const liked = landing(12, 30);

function said(same: SameLanding, bottle?: MatchedFill['landing'], mix?: string): string {
  const single = bottle === undefined ? [] : [{ name: 'clear 200', landing: bottle } as MatchedFill];
  return landingAnswer(
    { build, singles: single } as never,
    'wide in short 12',
    { landings: { drop: 0.1, liked, assumptions: [], on: () => 'locks' }, same },
    410e-6,
    mix === undefined ? undefined : { recipe: mix, low: 1, high: 1, typical: 410e-6 },
    '',
  );
}

const none = (why: (SameLanding & { found: false })['why'], landed?: Landed): SameLanding => ({
  found: false,
  why,
  kinematicViscosity: 0.05,
  ...(landed && { landed }),
});
const open = 'No oil lets wide in short 12 land like buggy front from 100 mm, 12 mm in: ';

describe('why no oil brings a landing back', () => {
  test('too much holds it back: more holes; too little: fewer', () => {
    expect(said(none('goes in less', landing(9, 40)))).toBe(
      `${open}even on the thinnest it stops 9 mm in. Another piston is needed, with more or wider holes.`,
    );
    expect(said(none('goes in further', landing(15, 10)))).toBe(
      `${open}on the thickest that lets it land, 50000 cSt as warm as it is, it still goes 15 mm in. Another piston is needed, with fewer or narrower holes.`,
    );
  });

  test('no room: less oil or more gas; no stop: a lower drop', () => {
    expect(said(none('locks'))).toBe(
      `${open}its gas has no room for shaft and cavity on the way. Close it with less oil, or choose a body with more gas.`,
    );
    expect(said(none('goes through'))).toBe(
      `${open}its stops do not catch it before the piston comes to the end of its oil. Choose a lower drop.`,
    );
  });
});

describe('the oil that brings it back', () => {
  const found = (landed: Landed): SameLanding => ({ found: true, kinematicViscosity: 4e-4, landed });

  test('33 N are 10 % harder than 30 N, 24 N 20 % softer, and 30 N as hard as before', () => {
    const pushes = (push: number) => said(found(landing(12, push)));
    expect(pushes(33)).toContain(
      'pushes with 33 N at most, 10 % harder than the 30 N before; no two bottles',
    );
    expect(pushes(24)).toContain('pushes with 24 N at most, 20 % softer than the 30 N before;');
    expect(pushes(30)).toContain('pushes with 30 N at most, as hard as before;');
  });

  test('the nearest bottle goes in further, less far or as far, touches its stop, or lands on none', () => {
    const on = (bottle: MatchedFill['landing']) =>
      said(found(landing(12, 30)), bottle, '8 ml of a with 2 ml of b');
    expect(on(landing(13, 25))).toMatch(
      /; 8 ml of a with 2 ml of b is that oil\. On the nearest bottle, clear 200, it goes in 1 mm further\.$/u,
    );
    expect(on(landing(11.5, 35))).toMatch(/goes in 0\.5 mm less far\.$/u);
    expect(on(landing(12, 30))).toMatch(/goes in as far\.$/u);
    expect(on(landing(14, 25, true))).toMatch(/goes in 2 mm further and touches its bump stop\.$/u);
    expect(on('locks')).toMatch(/ On no bottle near it does the new shock land\.$/u);
    expect(on(undefined)).toMatch(/is that oil\.$/u);
  });
});
