import { describe, expect, it } from 'vitest';
import { type Row, refusal } from './refusal.js';
import { changed } from './small-file.js';

describe('ways to know a viscosity', () => {
  const silicone = '    viscosity: 350 cSt\n    at: 25 °C\n';
  const petroleum = '    viscosity: 32 cSt\n    at: 40 °C\n    viscosity-index: 95\n';
  it.each<Row>([
    [
      'none',
      silicone,
      '',
      '4:5 oils[0]: needs one way to know its viscosity: "viscosity" with "at", "points", "iso-grade" or "trade-weight"',
    ],
    [
      'two',
      silicone,
      `${silicone}    trade-weight: 35\n`,
      '4:5 oils[0]: has more than one way to know its viscosity, viscosity and trade-weight; keep one',
    ],
    [
      'no temperature of a petroleum oil',
      '    at: 40 °C\n',
      '',
      '9:5 oils[1].at: is missing; write the temperature of the viscosity, for example "40 °C"',
    ],
    [
      'no viscosity',
      '    viscosity: 350 cSt\n',
      '',
      '4:5 oils[0].viscosity: is missing; write the viscosity, for example "350 cSt"',
    ],
    [
      'petroleum by one viscosity',
      '    viscosity-index: 95\n',
      '',
      '9:5 oils[1]: a petroleum oil with one viscosity needs more: add its "viscosity-index" (on the data sheet), or write "points" with a second temperature',
    ],
    [
      'index and coefficient',
      silicone,
      `${silicone}    viscosity-index: 400\n    viscosity-temperature-coefficient: 0.6\n`,
      '8:22 oils[0].viscosity-index: says the same as "viscosity-temperature-coefficient" in another way; keep one',
    ],
    [
      'coefficient of petroleum',
      'viscosity-index: 95',
      'viscosity-temperature-coefficient: 0.6',
      '13:40 oils[1].viscosity-temperature-coefficient: is for silicone; write "viscosity-index" for petroleum',
    ],
    [
      'index of an oil too thin for one',
      '32 cSt',
      '3 cSt',
      '13:22 oils[1].viscosity-index: is not defined for an oil of this viscosity (it must have 2 to 2000 cSt at 100 °C); write "points" instead',
    ],
    [
      'index beside points',
      silicone,
      '    points: [{ at: 10 °C, viscosity: 500 cSt }, { at: 40 °C, viscosity: 280 cSt }]\n    viscosity-index: 95\n',
      '7:22 oils[0].viscosity-index: does not go with "points"; leave it out',
    ],
    [
      'one point',
      silicone,
      '    points: [{ at: 10 °C, viscosity: 500 cSt }]\n',
      '6:13 oils[0].points: must have 2 to 50 entries, got 1',
    ],
    [
      'points at one temperature',
      silicone,
      '    points: [{ at: 10 °C, viscosity: 500 cSt }, { at: 10 °C, viscosity: 480 cSt }]\n',
      '6:13 oils[0].points: must be at different temperatures, with a viscosity that falls as it gets warmer',
    ],
    [
      'points that thicken with heat',
      silicone,
      '    points: [{ at: 10 °C, viscosity: 280 cSt }, { at: 40 °C, viscosity: 500 cSt }]\n',
      '6:13 oils[0].points: must be at different temperatures, with a viscosity that falls as it gets warmer',
    ],
    [
      'ISO grade without an index',
      petroleum,
      '    iso-grade: 2\n',
      '11:16 oils[1].iso-grade: is too thin for a viscosity index; write "points" instead',
    ],
    [
      'no such ISO grade',
      petroleum,
      '    iso-grade: 33\n',
      '11:16 oils[1].iso-grade: must be one of 2, 3, 5, 7, 10, 15, 22, 32, 46, 68, 100, 150, 220, 320, 460, 680, 1000, 1500, 2200, 3200, got 33',
    ],
    [
      'ISO grade of silicone',
      silicone,
      '    iso-grade: 32\n',
      '6:16 oils[0].iso-grade: is for petroleum; write "viscosity" and "at" for silicone',
    ],
    [
      'trade weight of petroleum',
      petroleum,
      '    trade-weight: 35\n',
      '11:19 oils[1].trade-weight: is a label of silicone damper oil; write "iso-grade" for petroleum',
    ],
    [
      'trade weight beyond the table',
      silicone,
      '    trade-weight: 100\n',
      '6:19 oils[0].trade-weight: must be a number from 10 to 80, got 100',
    ],
  ])('%s', (_what, from, to, message) => {
    expect(refusal(changed(from, to))).toBe(message);
  });
});
