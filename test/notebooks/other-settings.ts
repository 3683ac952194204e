/** Settings of a page, each as somebody may write it. */
export type Written = Readonly<Record<string, string | readonly string[]>>;

/**
 * Other settings than a page begins with, so that it says what it seldom says: the second of each choice, the other end of a slider, another build.
 */
export const otherSettings: Readonly<Record<string, readonly Written[]>> = {
  lesson: [{ wider: '1.2 mm', more: '1', hottest: '5 °C' }],
  'hole-size': [{ piston: 'four 1.3 thick', oil: 'workshop 32', temperature: '5 °C', drill: '0.2 mm' }],
  'compare-oils': [
    { oils: ['clear 650', 'clear 200', 'workshop 32'], reference: 'clear 650', temperature: '38 °C' },
  ],
  cavitation: [
    { build: 'buggy rear', temperature: '0 °C' },
    { build: 'big buggy front', temperature: '38 °C' },
  ],
  'bench-stroke': [
    { build: 'buggy rear', wave: 'triangle' },
    { build: 'big buggy front', amplitude: '3 mm', frequency: '0.5 Hz', temperature: '38 °C' },
  ],
  landing: [
    { build: 'buggy rear, mixed holes', drop: '600 mm' },
    { build: 'big buggy front', drop: '20 mm' },
  ],
  'warm-up': [
    { build: 'buggy rear', air: '0 °C', wind: '0 m/s', run: '3 min', bumps: '0.5 Hz' },
    { build: 'buggy rear, petroleum', air: '35 °C', wind: '8 m/s', run: '30 min', bumpHeight: '25 mm' },
  ],
  'compare-builds': [
    { builds: ['buggy front'] },
    { builds: ['buggy rear, petroleum', 'big buggy front'], drop: '400 mm' },
  ],
  'what-to-change': [
    { symptom: 'kicks in fast bumps' },
    { symptom: 'rolls or dives too fast', build: 'buggy rear' },
    { symptom: 'turns in too slowly' },
    { symptom: 'bounces after a landing' },
    { symptom: 'creeps out on the stand', build: 'big buggy front' },
  ],
  'build-sheet': [
    { build: 'buggy rear', weight: '20 g', lighterWeight: '10 g' },
    { build: 'buggy rear, petroleum', bench: '30 °C', smallestBubble: '0.1 mm' },
    { build: 'big buggy front', coldest: '-15 °C', hottest: '60 °C', rebuilds: '1' },
  ],
  'fill-and-bleed': [
    { build: 'buggy rear', freeAir: '0 ml', bench: '30 °C' },
    { build: 'buggy rear, petroleum', wait: '1 min', freeAir: '0.2 ml' },
    { build: 'big buggy front', hottest: '60 °C' },
  ],
  'compare-pistons': [
    { fast: '150 mm/s' },
    { pistons: ['four 1.3 thick', 'two 1.7'], oil: 'clear 200', temperature: '38 °C' },
  ],
  match: [
    { back: 'same landing', now: '5 °C' },
    { back: 'same landing', piston: 'four 1.3 thick', drop: '400 mm' },
    { matters: 'slow', piston: 'two 1.5 two 1.2', now: '5 °C', needed: '10 ml' },
    { matters: 'fast', shock: 'long 12', piston: 'four 1.3 thin' },
  ],
  'what-to-drill': [
    { back: 'same landing' },
    { slowHarder: '-20 %', middleHarder: '15 %', temperature: '5 °C', robust: '1 %' },
  ],
  'order-plan': [
    { tolerance: '3 %', right: '30 °C', fills: '2' },
    { builds: ['buggy rear'], tolerance: '25 %', blend: '1' },
  ],
  'day-plan': [{ worthwhile: '60 %' }, { builds: ['buggy rear'], worthwhile: '5 %', right: '30 °C' }],
  spread: [{ build: 'big buggy front', temperatureOff: '10 K', label: '1 %', fast: '2000 mm/s' }],
  pair: [{ limit: '1 %', weight: '25 g' }, { limit: '20 %' }],
  'what-you-have': [{ which: '2', speed: '30 mm/s' }],
  'measure-next': [
    { which: '2', law: '0 %' },
    { which: '2', law: '20 %', speed: '30 mm/s' },
  ],
  'what-is-wrong': [{ which: '2' }],
};

/** Builds of the file of odd shocks, on the pages that are quick with them. */
export const oddBuilds: typeof otherSettings = {
  cavitation: [{ build: 'beaten' }, { build: 'backwards' }, { build: 'valved' }],
  'fill-and-bleed': [{ build: 'beaten' }, { build: 'backwards' }, { build: 'valved' }],
  'compare-pistons': [{}],
  'compare-oils': [{}],
  'build-sheet': [{ build: 'backwards' }, { build: 'valved' }],
  'bench-stroke': [{ build: 'beaten' }],
  pair: [{}],
};
