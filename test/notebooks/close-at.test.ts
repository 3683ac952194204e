import { expect, test } from 'vitest';
import { groundAnswer } from '../../notebooks/landing/own-ground.js';
import { landingsOf } from '../../notebooks/match/landings.js';
import { files } from './answers.js';
import { buildOf } from './landing-cases.js';

const rear = { ...buildOf(files.demo, 'buggy rear'), closeAt: 0.02 };

test('where a build closes its shock goes with that shock and with no other', () => {
  const closedIn = (name: string) => {
    const shock = files.demo.shocks.find((one) => one.name === name);
    if (shock === undefined) throw new Error(`no ${name}`);
    const { on } = landingsOf({
      build: rear,
      right: { oil: rear.oil, temperature: 293.15 },
      shock,
      piston: rear.piston,
      now: 303.15,
      drop: 0.05,
    });
    const landed = on(rear.oil);
    if (typeof landed === 'string') throw new Error(landed);
    return landed.moving.build.closeAt;
  };
  expect(closedIn('long 12')).toBe(0.02);
  expect(closedIn('short 12')).toBeUndefined();
});

test('ground is refused by how far it lies from that of its first row', () => {
  const ground = { times: [0, 1, 2], values: [0.1, 0.3, 0.7] };
  expect(() => groundAnswer(rear, 293.15, ground)).toThrow(/got 600 mm in row 3/u);
});
