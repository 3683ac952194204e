import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pagePassed, readParameterValues } from '../../lib/page/index.js';
import { type Parts, readParts } from '../../lib/parts/index.js';
import { notebook } from '../../notebooks/build-sheet.js';

const demo = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');
const parts = readParts(demo);

function pageOf(from: Parts, texts: Readonly<Record<string, string>>) {
  return notebook.run(from, readParameterValues(notebook.parameters, texts, from));
}

/** The demo file with one text replaced; the text must be there. */
function demoWith(from: string, to: string): Parts {
  if (!demo.includes(from)) throw new Error(`"${from}" is not in the demo file`);
  return readParts(demo.replace(from, () => to));
}

const sheetsOf = (page: ReturnType<typeof pageOf>) =>
  page.blocks.flatMap((block) => (block.kind === 'checklist' ? [block] : []));

describe.each(parts.builds.map(({ name, quantity }) => ({ name, quantity })))(
  '$name',
  ({ name, quantity }) => {
    const page = pageOf(parts, { build: name });

    it('passes its own checks', () => expect(pagePassed(page)).toBe(true));

    it('has a sheet for each shock', () => {
      expect(sheetsOf(page).map(({ title }) => title)).toEqual(
        Array.from({ length: quantity }, (_, index) => `${name}, shock ${index + 1} of ${quantity}`),
      );
    });

    it('says no number that is none', () => {
      expect(JSON.stringify(page)).not.toMatch(/NaN|Infinity|undefined/u);
    });
  },
);

describe('the sheet', () => {
  const page = pageOf(parts, { build: 'buggy rear' });
  const [sheet] = sheetsOf(page);
  const aimOf = (title: string): string | undefined => sheet?.steps.find((step) => step.title === title)?.aim;

  it('runs in the order of a careful build, each step with the fault it prevents', () => {
    expect(sheet?.steps.map(({ title }) => title)).toEqual([
      'Strip and inspect',
      'Deburr the piston',
      'Try the piston in the bore',
      'Seals',
      'Friction without oil',
      'Piston and threadlocker',
      'Length',
      'Pour',
      'Clear the piston',
      'Wait',
      'Close',
      'Work it and bleed again',
      'Push at three places',
      'Hang a weight',
      'Hang a lighter weight',
      'Against its partner',
    ]);
    for (const step of sheet?.steps ?? []) expect(step.prevents).not.toBe('');
  });

  it('takes its numbers from the parts file', () => {
    expect(aimOf('Strip and inspect')).toContain('3.00 mm');
    expect(aimOf('Deburr the piston')).toBe('4 × 1.30 mm');
    // 58 + (49 − 11 − 2) + 8
    expect(aimOf('Length')).toMatch(/^102 mm/u);
    // 49 − 11 − 2 − 14
    expect(aimOf('Close')).toBe('Shaft 14 mm in, 22 mm showing');
    // π/4 12² 42 − 320 − π/4 3² 2 mm³ to the rim
    expect(aimOf('Pour')).toBe('4.42 ml at 20 °C');
  });

  it('asks to measure where nobody has a number', () => {
    const front = sheetsOf(pageOf(parts, { build: 'buggy front' }))[0];
    expect(front?.steps.find(({ title }) => title === 'Length')?.aim).toMatch(/Not in the parts file/u);
  });

  it('warns where hot oil locks the shaft before the end of its stroke, says where, and keeps quiet where it does not', () => {
    const tight = demoWith('kind: bladder, volume: 1.0 ml', 'kind: bladder, volume: 0.2 ml');
    const cautions = (from: Parts, hottest: string) =>
      pageOf(from, { build: 'buggy rear', hottest })
        .blocks.flatMap((block) => (block.kind === 'caution' ? [block.text] : []))
        .join(' ');
    const said = /With oil at 60 °C the shaft locks ([\d.]+) mm in, before the end of its stroke of 30 mm/u;
    // 4.74 ml of oil grow by 0.9 % for every ten kelvin of 40 (a data sheet's 0.00092 1/K, from memory) into 0.22 ml of gas under a cap closed 14 mm in; what is left is room for the shaft of 3 mm.
    const byHand = 14 + (220 - 4740 * 0.0092 * 4) / ((Math.PI / 4) * 3 ** 2);
    expect(Math.abs(Number(said.exec(cautions(tight, '60 °C'))?.[1]) - byHand)).toBeLessThan(1);
    expect(cautions(tight, '40 °C')).not.toContain('locks');
    expect(cautions(parts, '60 °C')).not.toContain('locks');
  });

  it('compares its volumes with each other and its slow damping with textbooks', () => {
    const checks = (from: Parts) =>
      pageOf(from, { build: 'buggy rear' }).blocks.flatMap((block) =>
        block.kind === 'check' ? [block] : [],
      );
    expect(checks(parts).map(({ consistency = false, passed }) => [consistency, passed])).toEqual([
      [true, true],
      [false, true],
    ]);
  });

  it('still makes a sheet for a shock with nothing that makes room', () => {
    const locked = readParts(
      demo
        .replace(
          'compensator: { kind: bladder, volume: 1.0 ml, stiffness: 15 kPa/ml }',
          'compensator: { kind: none }',
        )
        .replace('closing: { shaft: 14 mm,', 'closing: { shaft: fully in,'),
    );
    const page = pageOf(locked, { build: 'buggy rear' });
    expect(JSON.stringify(page)).toContain('With oil at 38 °C the shaft locks');
    expect(JSON.stringify(page)).toContain('Nothing but the air left in the oil makes room under this cap');
  });

  it('frees a bubble by pulling, not by pushing', () => {
    const text = sheet?.steps.find(({ title }) => title === 'Clear the piston')?.text;
    // Holes of 0.65 mm radius are narrower than the capillary length of 1.5 mm, so that a bubble sticks under them.
    expect(text).toMatch(/pulling the shaft out faster than [\d.]+ mm\/s frees it, pushing it in does not/u);
  });

  it('creeps out where the gas is stronger than the seals, and stays where it is weaker', () => {
    const said = (friction: string) =>
      JSON.stringify(
        pageOf(demoWith('moving-friction: 0.18 N', `moving-friction: ${friction}`), {
          build: 'buggy front',
        }).blocks,
      );
    // Fully in 0.16965 of 0.9 ml of gas are gone: 1 atm · 7.0686 mm² · 0.2323 = 0.166 N push out.
    expect(said('0.10 N')).toMatch(/Pushed fully in and let go, it first comes out at [\d.]+ mm\/s\./u);
    expect(said('0.20 N')).toContain(
      'Pushed fully in and let go, it stays: the gas is weaker than the seal friction of 0.2 N.',
    );
  });

  it('says so where a weight is too light', () => {
    const page = pageOf(parts, { build: 'buggy rear', lighterWeight: '10 g' });
    expect(JSON.stringify(page)).toContain('too light');
    expect(() => pageOf(parts, { build: 'buggy rear', weight: '40 g' })).toThrow(/lighterWeight/u);
  });

  it('cautions before it begins', () => {
    const text = page.blocks.flatMap((block) => (block.kind === 'caution' ? [block.text] : [])).join(' ');
    for (const word of ['eye protection', 'Solvents', 'threadlocker', 'hot oil', 'springs', 'instructions'])
      expect(text).toContain(word);
  });
});
