import { describe, expect, test } from 'vitest';
import type { DrawnShock, MotionFrame } from '../../lib/page/blocks/motion.js';
import type { HtmlElement } from '../../lib/page/html/html.js';
import { htmlText } from '../../lib/page/html/html-text.js';
import { motionHtml } from '../../lib/page/html/motion-html.js';
import { motionPicture } from '../../lib/page/html/motion-picture.js';
import { direction, force, sectionsOf, shockDrawing } from '../../lib/page/html/shock-drawing.js';

// Bore 12 mm and shaft 4 mm: areas 36 π and 4 π mm², so that volumes below are easy by hand.
const mm2 = Math.PI * 1e-6;
const shock: DrawnShock = {
  bore: 0.012,
  shaftDiameter: 0.004,
  stroke: 0.02,
  pistonThickness: 0.002,
  holes: [0.0015, 0.0015],
  gasAt: 'blind-side',
  gasVolume: 36 * mm2 * 0.005,
  oilVolume: 36 * mm2 * 0.022 + 32 * mm2 * 0.004,
  clearance: 0.004,
  bumpStop: 0.017,
};
const rest: MotionFrame = {
  time: 0,
  travel: 0,
  speed: 0,
  force: 0.2,
  blindPressure: 1e5,
  shaftPressure: 1e5,
  cavity: 0,
};
const rects = (drawing: HtmlElement, fill: string) =>
  drawing.children.flatMap((node) =>
    typeof node !== 'string' && 'tag' in node && node.tag === 'rect' && node.attributes['fill'] === fill
      ? [node.attributes]
      : [],
  );
const close = (places: readonly number[], expected: readonly number[]) => {
  places.forEach((place, index) => {
    expect(place).toBeCloseTo(expected[index] ?? Number.NaN, 9);
  });
};

describe('a shock drawn to scale', () => {
  test('fully out: gas of 5 mm, oil of 22 mm, piston, clearance', () => {
    const { inside, gas, piston, cavity } = sectionsOf(shock, rest);
    close(gas, [0, 0.005]);
    close(piston, [0.027, 0.029]);
    expect(inside).toBeCloseTo(0.033, 9);
    expect(cavity[1] - cavity[0]).toBe(0);
  });

  test('9 mm in, the shaft takes 1 mm of the gas; a cavity of 3.2 mm behind the piston takes its own volume', () => {
    const cavity = 32 * mm2 * 0.0032;
    const found = sectionsOf(shock, { ...rest, travel: 0.009, cavity });
    close(found.piston, [0.018, 0.02]);
    close(found.cavity, [0.02, 0.0232]);
    close(found.gas, [0, 0.005 - 0.001 - (0.0032 * 32) / 36]);
    // All rooms together are what was filled in: oil, gas less what the shaft took.
    const oil = 36 * mm2 * (found.piston[0] - found.gas[1]) + 32 * mm2 * (found.inside - found.cavity[1]);
    expect(oil).toBeCloseTo(shock.oilVolume, 12);
  });

  test('with the gas on the shaft side it stands at the seal, and the cavity in front of the piston', () => {
    const other: DrawnShock = { ...shock, gasAt: 'shaft-side', clearance: 0.012 };
    const { gas, inside, cavity, piston } = sectionsOf(other, {
      ...rest,
      travel: 0.009,
      cavity: 36 * mm2 * 0.002,
    });
    expect(gas[1]).toBe(inside);
    expect(cavity[1]).toBe(piston[0]);
    expect(piston[0] - cavity[0]).toBeCloseTo(0.002, 9);
  });

  test('lengths and widths have one scale, pressure is shade, and deeper is further left', () => {
    const drawing = shockDrawing(shock, rest, 'wide');
    const [gasColour, oilColour] = ['#e69f00', '#0072b2'];
    const [gas] = rects(drawing, gasColour);
    expect(Number(gas?.['width']) / Number(gas?.['height'])).toBeCloseTo(5 / 12, 2);
    const squeezed = shockDrawing(
      shock,
      { ...rest, travel: 0.009, blindPressure: 4e5, shaftPressure: 0 },
      'wide',
    );
    const [blind, shaftSide] = rects(squeezed, oilColour);
    expect(Number(blind?.['fill-opacity'])).toBeGreaterThan(2 * Number(shaftSide?.['fill-opacity']));
    const pistonAt = (one: HtmlElement) => Number(rects(one, '#565f69')[0]?.['x']);
    expect(pistonAt(squeezed)).toBeLessThan(pistonAt(drawing));
    const text = htmlText({ nodes: [squeezed] });
    expect(text).toContain('blind side 4.00 bar');
    expect(text).toContain('shaft side 0.00 bar');
    expect(text).toContain('viewBox="0 0 680');
  });

  test('words have the direction of speed and force', () => {
    expect(direction(0.3)).toBe('going in at 300 mm/s');
    expect(direction(-0.3)).toBe('coming out at 300 mm/s');
    expect(direction(0)).toBe('at rest');
    expect(force(-3)).toBe('holds back with 3.0 N');
    expect(force(3)).toBe('pushes out with 3.0 N');
  });

  test('stills as one picture: each below the other within its height, its words escaped, seen by who sees nothing', () => {
    const squeezed = { ...rest, time: 0.016, travel: 0.009, force: 48 };
    const picture = motionPicture({
      kind: 'motion',
      id: 'at-work',
      title: 'Tight & quick',
      alt: 'It moves in 9 mm.',
      shock,
      frames: [rest, squeezed],
      stills: [
        { frame: rest, label: 'At the start' },
        { frame: squeezed, label: 'Deepest' },
      ],
    });
    expect(picture).toContain('aria-labelledby="at-work-title" aria-describedby="at-work-desc"');
    expect(picture).toContain('<title id="at-work-title">Tight &amp; quick</title>');
    expect(picture).toContain('<desc id="at-work-desc">It moves in 9 mm.</desc>');
    const headings = [...picture.matchAll(/font-weight="600">([^<]*)</gu)].map(([, words]) => words);
    expect(headings).toEqual(['Tight &amp; quick', 'At the start, 0\u00a0ms', 'Deepest, 16\u00a0ms']);
    const tops = [...picture.matchAll(/translate\(0,([\d.]+)\)/gu)].map(([, top]) => Number(top));
    // By hand: 33 mm inside, walls of 1.2 mm, 20 mm of stroke, stop and shaft of 9 mm, in 676 px; the body of 12 mm has two walls.
    const one = 20 + (2 * 1.2 + 12) * (676 / (33 + 2.4 + 20 + 9)) + 40;
    expect((tops[1] ?? 0) - (tops[0] ?? 0)).toBeCloseTo(one + 26, 1);
    expect(Number(/ height="(\d+)"/u.exec(picture)?.[1])).toBe(Math.ceil((tops[1] ?? 0) + one));
    expect(picture.match(/mm in, /gu)).toHaveLength(2);
  });

  test('a page without scripts has the stills', () => {
    const markup = htmlText(
      motionHtml({
        kind: 'motion',
        id: 'at-work',
        title: 'At work',
        alt: 'It moves.',
        shock,
        frames: [rest, { ...rest, time: 0.1, travel: 0.01 }],
        stills: [{ frame: { ...rest, time: 0.1, travel: 0.01 }, label: 'Half in' }],
      }),
    );
    expect(markup.match(/<svg /gu)).toHaveLength(2);
    expect(markup).toContain('Half in');
    expect(markup).toContain('10.0 mm in');
  });
});
