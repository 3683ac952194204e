import { inkColours, seriesColours } from '../../plot/chart/palette.js';
import type { DrawnShock, MotionFrame } from '../blocks/motion.js';
import type { HtmlElement, HtmlNode } from './html.js';

const [oilColour, gasColour] = [seriesColours[0], seriesColours[5]];
const { ink, muted, rule, paper } = inkColours;

/** Widths at which a shock is drawn [px], those of the figures. */
const widths = { wide: 680, narrow: 340 } as const;

/** Length of shaft beyond its stroke, wall and stop [m]: only looks. */
const shaftBeyond = 6e-3;
const wall = 1.2e-3;
const stopLength = 3e-3;

/** Room above the body, for words [px]. */
const top = 20;

/** Pressure that is drawn in full colour [Pa]. */
const darkest = 6e5;

/** Lengths of a shock along its axis at one time [m], from the inside of the cap. */
export interface Sections {
  readonly inside: number;
  /** Gas, from one place to another; no length where there is none. */
  readonly gas: readonly [number, number];
  readonly piston: readonly [number, number];
  readonly cavity: readonly [number, number];
}

/** Where everything is: volumes are those of the frame, so that nothing drawn is lost or won. */
export function sectionsOf(
  shock: DrawnShock,
  { travel, cavity }: Pick<MotionFrame, 'travel' | 'cavity'>,
): Sections {
  const { bore, shaftDiameter, pistonThickness, gasAt, gasVolume, oilVolume, clearance } = shock;
  const boreArea = (Math.PI / 4) * bore ** 2;
  const shaftArea = (Math.PI / 4) * shaftDiameter ** 2;
  const annulus = boreArea - shaftArea;
  const onShaftSide = clearance * annulus;
  const blind = (gasVolume + oilVolume - onShaftSide) / boreArea;
  const inside = blind + pistonThickness + clearance;
  const face = blind - travel;
  const gas = Math.max(0, gasVolume - shaftArea * travel - cavity);
  if (gasAt === 'shaft-side') {
    return {
      inside,
      gas: [inside - gas / annulus, inside],
      piston: [face, face + pistonThickness],
      cavity: [face - cavity / boreArea, face],
    };
  }
  const back = face + pistonThickness;
  return {
    inside,
    gas: [0, gasAt === 'mixed' ? 0 : gas / boreArea],
    piston: [face, back],
    cavity: [back, back + cavity / annulus],
  };
}

/** Width and height of a drawing [px], and pixels for a metre. */
export function drawingSize(
  shock: DrawnShock,
  layout: keyof typeof widths,
): { readonly width: number; readonly height: number; readonly scale: number } {
  const width = widths[layout];
  // Only gas and cavity change on the way.
  const { inside } = sectionsOf(shock, { travel: 0, cavity: 0 });
  const scale = (width - 4) / (inside + 2 * wall + shock.stroke + stopLength + shaftBeyond);
  const lines = layout === 'narrow' ? 56 : 40;
  return { width, height: rounded(top + (2 * wall + shock.bore) * scale + lines), scale };
}

/** The drawing of a frame at one width: a cut along the axis, to scale, with pressures by shade and number. */
export function shockDrawing(
  shock: DrawnShock,
  frame: MotionFrame,
  layout: keyof typeof widths,
): HtmlElement {
  const { width, height, scale } = drawingSize(shock, layout);
  const sections = sectionsOf(shock, frame);
  const { inside, gas, piston, cavity } = sections;
  const bodyHeight = shock.bore * scale;
  const middle = top + wall * scale + bodyHeight / 2;
  const x = (place: number): number => 2 + (wall + place) * scale;
  const box = (from: number, to: number, height: number, attributes: Attributes): HtmlElement =>
    element('rect', {
      x: x(from),
      y: middle - height / 2,
      width: Math.max(0, (to - from) * scale),
      height,
      ...attributes,
    });
  const shaft = shock.shaftDiameter * scale;
  const [face, back] = piston;
  const oil = (from: number, to: number, pressure: number) =>
    box(from, to, bodyHeight, { fill: oilColour, 'fill-opacity': shade(pressure) });
  const { bumpStop } = shock;
  const seat = inside + wall;
  const below = top + 2 * wall * scale + bodyHeight + 16;
  const parts: HtmlNode[] = [
    box(-wall, inside + wall, bodyHeight + 2 * wall * scale, { fill: rule }),
    box(0, inside, bodyHeight, { fill: paper }),
    oil(0, face, frame.blindPressure),
    oil(back, inside, frame.shaftPressure),
    ...(gas[1] > gas[0]
      ? [
          box(...gas, bodyHeight, { fill: paper }),
          box(...gas, bodyHeight, { fill: gasColour, 'fill-opacity': 0.45 }),
        ]
      : []),
    ...(cavity[1] > cavity[0]
      ? [box(...cavity, bodyHeight, { fill: paper, stroke: ink, 'stroke-dasharray': '3 2' })]
      : []),
    box(face, back, bodyHeight, { fill: muted }),
    ...shock.holes.map((diameter, index) =>
      element('rect', {
        x: x(face),
        y: middle + (index % 2 === 0 ? -1 : 1) * 0.28 * bodyHeight - (diameter * scale) / 2,
        width: (back - face) * scale,
        height: diameter * scale,
        fill: paper,
      }),
    ),
    box(back, seat + shock.stroke - frame.travel + stopLength + shaftBeyond, shaft, { fill: ink }),
    ...(bumpStop === undefined
      ? []
      : [
          box(
            seat + Math.max(0, bumpStop - frame.travel),
            seat + Math.max(0, bumpStop - frame.travel) + stopLength,
            3 * shaft,
            { fill: muted },
          ),
        ]),
    ...labels(shock, frame, sections, x, below, layout),
  ];
  return {
    tag: 'svg',
    attributes: {
      viewBox: `0 0 ${width} ${height}`,
      width: `${width}`,
      'aria-hidden': 'true',
      'font-family': 'Inter, Helvetica, Arial, sans-serif',
      'font-size': '12',
    },
    children: parts,
  };
}

function labels(
  shock: DrawnShock,
  frame: MotionFrame,
  { inside, gas, cavity }: Sections,
  x: (place: number) => number,
  below: number,
  layout: keyof typeof widths,
): readonly HtmlElement[] {
  const narrow = layout === 'narrow';
  const text = (at: number, y: number, words: string, anchor: string): HtmlElement => ({
    ...element('text', { x: at, y, fill: ink, 'text-anchor': anchor }),
    children: [words],
  });
  const bar = (pressure: number) => `${(pressure / 1e5).toFixed(2)} bar`;
  const blindSide = `blind side ${bar(frame.blindPressure)}`;
  const shaftSide = `shaft side ${bar(frame.shaftPressure)}`;
  const state = `${(1000 * frame.travel).toFixed(1)} mm in, ${direction(frame.speed)}, ${shock.gasAt === 'mixed' ? 'gas in the oil, ' : ''}${force(frame.force)}`;
  const gasMiddle = x((gas[0] + gas[1]) / 2);
  return [
    ...(gas[1] > gas[0] ? [text(Math.max(gasMiddle, 14), 13, 'gas', 'middle')] : []),
    ...(frame.cavity > 0 ? [text(x((cavity[0] + cavity[1]) / 2), 13, 'cavity', 'middle')] : []),
    text(x(0), below, blindSide, 'start'),
    narrow ? text(x(0), below + 16, shaftSide, 'start') : text(x(inside), below, shaftSide, 'end'),
    text(x(0), below + (narrow ? 32 : 17), state, 'start'),
  ];
}

/** What the shaft does, in words. */
export function direction(speed: number): string {
  const size = Math.round(1000 * Math.abs(speed));
  return size === 0 ? 'at rest' : `${speed > 0 ? 'going in' : 'coming out'} at ${size} mm/s`;
}

/** What the force does, in words. */
export function force(newtons: number): string {
  return newtons < 0
    ? `holds back with ${(-newtons).toFixed(1)} N`
    : `pushes out with ${newtons.toFixed(1)} N`;
}

/** Oil the darker the higher its pressure. */
function shade(pressure: number): number {
  return rounded(0.12 + 0.78 * Math.min(1, Math.sqrt(Math.max(0, pressure) / darkest)));
}

type Attributes = Readonly<Record<string, string | number>>;

function element(tag: string, attributes: Attributes): HtmlElement {
  const texts = Object.entries(attributes).map(
    ([name, value]) => [name, typeof value === 'number' ? String(rounded(value)) : value] as const,
  );
  return { tag, attributes: Object.fromEntries(texts), children: [] };
}

function rounded(value: number): number {
  return Math.round(100 * value) / 100;
}
