import { expect, test } from 'vitest';
import { joinedLines } from '../../lib/plot/vega/joined-lines.js';
import { tidySvg } from '../../lib/plot/vega/tidy-svg.js';

/** What is inside the tidy form of a picture. */
const tidy = (inside: string): string =>
  /^<svg [^>]*>(.*)<\/svg>$/su.exec(
    tidySvg(`<svg xmlns="http://www.w3.org/2000/svg">${inside}</svg>`, 'a-wide'),
  )?.[1] ?? '';

test('coordinates are rounded to 0.01 px, and there is no zero below zero', () => {
  expect(tidy('<path d="M1.23456,-0.001L-7.996,2.5e-7" stroke-opacity="0.12345"/>')).toBe(
    '<path d="M1.23,0L-8,0" stroke-opacity="0.12345"/>',
  );
});

test('a group that says nothing goes, with its end, and what is in it stays', () => {
  expect(tidy('<g class="mark"><g fill="red"><g><path d="M0,0"/></g></g><text>b</text></g>')).toBe(
    '<g fill="red"><path d="M0,0"/></g><text>b</text>',
  );
  expect(tidy('<g><g></g></g><g fill="red"><g fill="blue"><rect/></g></g>')).toBe(
    '<g fill="red"><g fill="blue"><rect/></g></g>',
  );
});

test('a shape that clips stands once, under the name of the picture, and none that clips nothing', () => {
  const clip = (id: number, width: number): string =>
    `<clipPath id="clip${id}"><rect width="${width}"/></clipPath>`;
  const use = (id: number): string => `<path clip-path="url(#clip${id})"/>`;
  expect(
    tidy(`<defs>${clip(0, 5)}${clip(1, 5)}${clip(2, 5)}${clip(3, 7)}</defs>${use(1)}${use(2)}${use(3)}`),
  ).toBe(
    '<defs><clipPath id="a-wide-clip1"><rect width="5"/></clipPath><clipPath id="a-wide-clip3"><rect width="7"/></clipPath></defs>' +
      '<path clip-path="url(#a-wide-clip1)"/><path clip-path="url(#a-wide-clip1)"/><path clip-path="url(#a-wide-clip3)"/>',
  );
});

test('neighbouring texts say once what they have in common', () => {
  const text = (at: number, fill: string): string =>
    `<text transform="translate(${at},2)" fill="${fill}">${at}</text>`;
  expect(tidy(`${text(1, 'red')}${text(3, 'red')}${text(5, 'blue')}`)).toBe(
    '<g fill="red"><text transform="translate(1,2)">1</text><text transform="translate(3,2)">3</text></g><text transform="translate(5,2)" fill="blue">5</text>',
  );
});

test('neighbouring lines of one ink become one path, which goes where they went', () => {
  const line = (rest: string): string => `<line ${rest}/>`;
  expect(
    joinedLines(
      line('transform="translate(1,2)" x2="3" stroke="red"') +
        line('transform="translate(4,5)" y2="6" stroke="red"') +
        line('x2="1" y2="2" stroke="blue"'),
    ),
  ).toBe('<path d="M1,2l3,0M4,5l0,6" stroke="red"/><path d="M0,0l1,2" stroke="blue"/>');
  expect(joinedLines('<line x2="3"/><rect/>')).toBe('<line x2="3"/><rect/>');
});
