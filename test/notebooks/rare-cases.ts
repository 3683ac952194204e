import type { Written } from './other-settings.js';

type Files = 'rare' | 'twoCars' | 'odd';

/** Shocks of the file of rare ones, and of two other files, on pages that say of them what they seldom say. */
export const rareCases: Readonly<Record<string, Partial<Record<Files, readonly Written[]>>>> = {
  'build-sheet': {
    rare: [
      { build: 'no room' },
      { build: 'hardly any gas' },
      { build: 'squeezed gas' },
      { build: 'rubbing' },
      { build: 'no hole', rideHeight: '60 mm' },
      { build: 'brim' },
      { build: 'long body', hottest: '60 °C' },
      { build: 'deep cap', airAtFill: '0.5 ml' },
      { build: 'usual', weightTime: '1 s', lighterTime: '40 s' },
    ],
  },
  'fill-and-bleed': {
    rare: [
      { build: 'no room' },
      { build: 'hardly any gas' },
      { build: 'squeezed gas' },
      { build: 'rubbing' },
      { build: 'long body', hottest: '60 °C' },
    ],
    twoCars: [{ build: 'buggy rear' }],
  },
  cavitation: {
    rare: [
      { build: 'no room' },
      { build: 'hardly any gas' },
      { build: 'squeezed gas' },
      { build: 'rubbing' },
      { build: 'no hole' },
      { build: 'bubbles' },
    ],
  },
  'bench-stroke': {
    rare: [
      { build: 'no room' },
      { build: 'hardly any gas' },
      { build: 'squeezed gas' },
      { build: 'no hole' },
    ],
  },
  landing: {
    rare: [
      { build: 'no room' },
      { build: 'without a spring' },
      { build: 'limp' },
      { build: 'heavy', drop: '1000 mm' },
      { build: 'squeezed gas', drop: '300 mm' },
      { build: 'stiff' },
      { build: 'dry' },
      { build: 'boulder', drop: '1000 mm' },
      { build: 'too heavy' },
    ],
  },
  'warm-up': {
    rare: [
      { build: 'squeezed gas', air: '20 °C' },
      { build: 'usual', bumps: '0 Hz', landings: '0' },
    ],
  },
  'compare-builds': {
    rare: [
      { builds: ['usual', 'without a spring'] },
      { builds: ['usual', 'no room'] },
      { builds: ['squeezed gas', 'close fit'] },
    ],
    twoCars: [{ builds: ['buggy front', 'buggy rear'] }],
  },
  'what-to-change': {
    rare: [
      { build: 'squeezed gas' },
      { build: 'no hole', symptom: 'kicks in fast bumps' },
      { build: 'stiff' },
    ],
  },
  'compare-pistons': {
    rare: [{}, { pistons: ['gaping', 'blind'], oil: 'thins 900' }],
  },
  'compare-oils': {
    rare: [
      {},
      { oils: ['thick 60000'], reference: 'thick 60000' },
      { oils: ['plain 300', 'same 300'], reference: 'plain 300' },
    ],
  },
  'hole-size': {
    rare: [
      { piston: 'blind' },
      { piston: 'gaping', drill: '0.3 mm' },
      { piston: 'pinhole', drill: '0.3 mm' },
      { piston: 'packed', drill: '0.3 mm' },
    ],
  },
  lesson: {
    rare: [
      { piston: 'gaping', oil: 'thin 5' },
      { piston: 'pinhole', oil: 'thick 60000' },
    ],
  },
  match: {
    rare: [
      { build: 'usual', piston: 'gaping', back: 'same landing' },
      { build: 'usual', piston: 'gaping' },
      { build: 'usual', piston: 'pinhole', back: 'same landing' },
      { build: 'usual', shock: 'full', back: 'same landing' },
      { build: 'usual', heavier: '-20 %', shock: 'squeezed', back: 'same landing', drop: '400 mm' },
      { build: 'heavy', drop: '300 mm', back: 'same landing' },
      { build: 'stiff', right: '20 °C', piston: 'gaping', back: 'same landing' },
    ],
  },
  spread: {
    rare: [{ build: 'close fit' }, { build: 'rubbing', label: '0 %', temperatureOff: '0 K' }],
  },
  pair: { rare: [{}, { weight: '10 g' }] },
  'what-you-have': { rare: ['1', '2', '3', '4', '5', '6', '7'].map((which) => ({ which })) },
  'what-is-wrong': { rare: ['1', '2', '3', '4', '5'].map((which) => ({ which })) },
  'measure-next': { rare: [{ which: '1' }, { which: '4' }] },
  'what-to-drill': {
    rare: [
      { build: 'usual', smallest: '3 mm', largest: '4 mm', mostHoles: '12' },
      { build: 'usual', smallest: '4 mm', largest: '4 mm', taper: '0 mm', mostHoles: '1' },
      { build: 'brim', back: 'same landing', drop: '300 mm' },
    ],
  },
  'order-plan': { rare: [{}], odd: [{}] },
  'day-plan': { rare: [{}] },
};
