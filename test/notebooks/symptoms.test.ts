import { expect, test } from 'vitest';
import { symptomNames, symptoms } from '../../notebooks/what-to-change/symptoms.js';

// By hand: what a driver asks the bench for (common practice, no source).
const wanted = {
  'bottoms on landings': ['more left', 'more fast'],
  'kicks in fast bumps': ['less fast'],
  'rolls or dives too fast': ['more slow'],
  'turns in too slowly': ['less slow'],
  'bounces after a landing': ['more slow', 'less push'],
  'creeps out on the stand': ['less push'],
};
const phrases = {
  slow: 'damping at the slow speed',
  fast: 'damping at the fast speed',
  left: 'stroke left in a landing',
  push: 'push of the gas',
};

test.each(symptomNames)('"%s" asks for what it says, more or less of it', (name) => {
  const { asks, words } = symptoms[name];
  const told = asks.map(({ measure, sign }) => [sign > 0 ? 'more' : 'less', measure] as const);
  expect(told.map((one) => one.join(' '))).toEqual(wanted[name]);
  expect(words).toBe(told.map(([much, measure]) => `${much} ${phrases[measure]}`).join(', and '));
});
