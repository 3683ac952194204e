import { describe, expect, it } from 'vitest';
import { fileWith, inside } from './one-statement.js';
import { refusal } from './refusal.js';

/** Lines of the shock, what is said of them, and a line of the build. */
type Statement = readonly [what: string, lines: string, message: string, ofBuild?: string];

const compensator = (text: string) => `    compensator: { ${text} }\n`;
const closing = (text: string) => `    closing: { ${text} }\n`;
const locks = 'that the 3 mm shaft takes from where the shock is closed,';

describe('statements that contradict each other', () => {
  it.each<Statement>([
    // 4045.3 − 2000 − 20 = 2025.3 mm³
    [
      'volume against inside and oil',
      `${inside}    oil-volume: 2 ml\n${compensator('kind: air-pocket, volume: 0.9 ml')}`,
      '27:46 shocks[0].compensator.volume: says 0.9 ml, but the inside has room for 4.05 ml beside piston and shaft, and oil of 2 ml and free air of 0.02 ml leave 2.03 ml: one of them is wrong',
    ],
    [
      'more oil than the inside has room for',
      `${inside}    oil-volume: 4.2 ml\n${compensator('kind: air-pocket')}`,
      '26:17 shocks[0].oil-volume: the inside has room for 4.05 ml beside piston and shaft, and oil of 4.2 ml and free air of 0.042 ml leave less than nothing (−0.197 ml): no room for gas',
    ],
    // 500 + 800 − 31.5 = 1268.5 mm³; the bubbles are 1 % of 4045.3 − 900
    [
      'volume against what was drawn off',
      `${inside}${compensator('kind: air-pocket, volume: 0.9 ml')}${closing('drawn-off: 0.8 ml')}`,
      '26:46 shocks[0].compensator.volume: says 0.9 ml, but 0.8 ml drawn off and the hollow of the cap of 0.5 ml less the shaft of 0 ml that went in and the free air of 0.0315 ml leave 1.27 ml: one of them is wrong',
    ],
    // Fully in 3875.7 mm³, less 3000 and 30
    [
      'nothing but oil, and less oil than that',
      `${inside}    oil-volume: 3 ml\n${compensator('kind: none')}`,
      '27:26 shocks[0].compensator.kind: says that nothing but oil is inside, but the inside has room for 3.88 ml beside piston and shaft, and oil of 3 ml and free air of 0.03 ml leave 0.846 ml: one of them is wrong',
    ],
    [
      'oil against the syringe',
      `${inside}    oil-volume: 3 ml\n${closing('poured: 4 ml, drawn-off: 0.5 ml')}`,
      '26:17 shocks[0].oil-volume: says 3 ml, but "closing" pours 3.5 ml that stay: one of them is wrong',
    ],
    [
      'more drawn off than poured',
      closing('poured: 4 ml, drawn-off: 4.5 ml'),
      '25:41 shocks[0].closing.drawn-off: must be less than what was poured',
    ],
    [
      'less drawn off than the shaft pushed out',
      closing('shaft: fully in, drawn-off: 0.1 ml'),
      '25:44 shocks[0].closing.drawn-off: 0.1 ml drawn off less the shaft of 0.17 ml that went in and the free air of 0.0256 ml leave less than nothing (−0.0952 ml): no room for gas',
    ],
    [
      'air that is said and guessed',
      closing('free-air: 0.02 ml, bleed: once'),
      '25:42 shocks[0].closing.bleed: must be left out where "free-air" says what is left',
    ],
    // A body of 12 mm that is 24 mm long, less the piston of 269 mm³: 2445.3 mm³
    [
      'oil and gas that do not fill the stroke',
      `    oil-volume: 1 ml\n${compensator('kind: air-pocket, volume: 0.9 ml')}`,
      '25:17 shocks[0].oil-volume: of 1 ml with gas of 0.91 ml does not fill a body of this bore that is as long as the stroke, which has room for 2.45 ml',
    ],
    [
      'foam larger than the inside',
      `${inside}${compensator('kind: foam, volume: 5 ml, gas-fraction: 0.9')}`,
      '26:40 shocks[0].compensator.volume: leaves no room for oil: with the free air it takes 5 ml of the 4.05 ml inside',
    ],
  ])('%s', (_what, lines, message) => {
    expect(refusal(fileWith(lines ?? ''))).toBe(message);
  });
});

describe('gas that cannot make room', () => {
  it.each<Statement>([
    // 100 mm³ and bubbles of 1 % of 2628 mm³, over 7.0686 mm²
    [
      'a bladder that fills before the stroke ends',
      compensator('kind: bladder, volume: 0.1 ml'),
      `25:43 shocks[0].compensator.volume: must leave more gas than the 169.6 mm³ ${locks} fully out, to the end of its stroke of 24 mm, got 126.3 mm³: the shock locks with the shaft 17.87 mm in`,
    ],
    [
      'the same bladder closed further in',
      compensator('kind: bladder, volume: 0.1 ml') + closing('shaft: 14 mm, free-air: 0 ml'),
      'accepted',
    ],
    [
      'nothing, closed with the shaft fully out',
      compensator('kind: none') + closing('shaft: fully out'),
      `25:18 shocks[0].compensator: must leave more gas than the 169.6 mm³ ${locks} fully out, to the end of its stroke of 24 mm, got 27.28 mm³: the shock locks with the shaft 3.859 mm in`,
    ],
    [
      'nothing, closed part way in by a build',
      compensator('kind: none'),
      `34:15 builds[0].close-at: must leave more gas than the 98.96 mm³ ${locks} 10 mm in, to the end of its stroke of 24 mm, got 26.57 mm³: the shock locks with the shaft 13.76 mm in`,
      '    close-at: 10 mm\n',
    ],
    [
      'a small bladder, closed fully in by a build',
      compensator('kind: bladder, volume: 0.1 ml'),
      'accepted',
      '    close-at: fully in\n',
    ],
  ])('%s', (_what, lines, message, ofBuild) => {
    expect(refusal(fileWith(lines ?? '', ofBuild))).toBe(message);
  });
});

describe('keys of what makes room', () => {
  const kinds = 'air-pocket or bladder or vented-bladder or foam or emulsion or none';
  const places = 'text such as "fully out", "fully in" or "14 mm"';
  it.each<Statement>([
    [
      'the former gas',
      '    gas: { volume: 0.9 ml, pressure: 1 atm }\n',
      '25:5 shocks[0].gas: was replaced: what makes room is said once. "volume" is "compensator.volume" now, or follows from "inside" and "oil-volume", or from "closing.drawn-off"; "pressure" follows from how the shock was closed ("closing.shaft", "closing.ambient-pressure"); "exponent" and "air-release-pressure" are in "compensator"; "ambient-pressure" is in "closing"; "layout" is "compensator.side", or the kind "emulsion"',
    ],
    [
      'a volume of an emulsion',
      compensator('kind: emulsion, volume: 0.1 ml'),
      '25:44 shocks[0].compensator.volume: has no meaning where the kind is emulsion',
    ],
    [
      'a gas fraction of a pocket',
      compensator('kind: air-pocket, gas-fraction: 0.1'),
      '25:52 shocks[0].compensator.gas-fraction: has no meaning where the kind is air-pocket',
    ],
    [
      'a stiffness of nothing',
      compensator('kind: none, stiffness: 4 kPa/ml'),
      '25:43 shocks[0].compensator.stiffness: has no meaning where the kind is none',
    ],
    [
      'a side of nothing',
      compensator('kind: none, side: shaft-side'),
      '25:38 shocks[0].compensator.side: has no meaning where the kind is none',
    ],
    [
      'a slack vented bladder',
      compensator('kind: vented-bladder, volume: 1 ml, stiffness: 0 kPa/ml'),
      '25:67 shocks[0].compensator.stiffness: must be greater than 0 kPa/ml for a vented bladder, got 0 kPa/ml',
    ],
    [
      'an unknown kind',
      compensator('kind: balloon'),
      `25:26 shocks[0].compensator.kind: must be ${kinds}, got "balloon"`,
    ],
    ['no kind', compensator('volume: 1 ml'), `25:18 shocks[0].compensator.kind: is missing; write ${kinds}`],
    [
      'an exponent beyond air',
      compensator('kind: none, exponent: 1.5'),
      '25:42 shocks[0].compensator.exponent: must be a number from 1 to 1.4, got 1.5',
    ],
    [
      'an air-release pressure beyond any oil',
      compensator('kind: none, air-release-pressure: 0.3 bar'),
      '25:54 shocks[0].compensator.air-release-pressure: must be 0 bar to 0.2 bar, got "0.3 bar"',
    ],
    [
      'a place in other words',
      closing('shaft: half way'),
      `25:23 shocks[0].closing.shaft: must be ${places}: "half way" is not a length such as "1.5 mm" (mm, µm, um, cm, m, in)`,
    ],
    [
      'a place without a unit',
      closing('shaft: 14'),
      `25:23 shocks[0].closing.shaft: must be ${places}, got 14`,
    ],
    [
      'a place past the stroke',
      closing('shaft: 25 mm'),
      '25:23 shocks[0].closing.shaft: must be at most the stroke of 24 mm of "short 12", got 25 mm',
    ],
    [
      'a place past any stroke',
      closing('shaft: 250 mm'),
      '25:23 shocks[0].closing.shaft: must be 0 mm to 200 mm, got "250 mm"',
    ],
    [
      'a place past the stroke, of a build',
      '',
      '33:15 builds[0].close-at: must be at most the stroke of 24 mm of "short 12", got 25 mm',
      '    close-at: 25 mm\n',
    ],
    [
      'bleeding in other words',
      closing('bleed: often'),
      '25:23 shocks[0].closing.bleed: must be never or once or twice or three times, got "often"',
    ],
    [
      'a boiling bench',
      closing('temperature: 100 °C'),
      '25:29 shocks[0].closing.temperature: must be -30 °C to 80 °C, got "100 °C"',
    ],
    [
      'a body shorter than the stroke',
      '    inside: { length: 20 mm }\n',
      '25:23 shocks[0].inside.length: must be at least the stroke and the droop spacers, 24 mm, got 20 mm',
    ],
    [
      'solid parts larger than the body',
      '    inside: { length: 34 mm, solid-volume: 4 ml }\n',
      '25:44 shocks[0].inside.solid-volume: must leave room inside: what is solid takes 4 ml, more than there is with the shaft fully in',
    ],
    [
      'breakaway below moving friction',
      '    seal: { moving-friction: 2 N, breakaway-friction: 1 N }\n',
      '25:55 shocks[0].seal.breakaway-friction: must be at least the moving friction of 2 N, got 1 N',
    ],
    [
      'a scale read the wrong way round',
      '    seal: { scale: { pushing-in: 0.1 N, letting-out: 0.5 N } }\n',
      '25:54 shocks[0].seal.scale.letting-out: must be at most the reading while pushing in',
    ],
    [
      'friction said twice',
      '    seal: { moving-friction: 1 N, scale: { pushing-in: 0.5 N, letting-out: 0.1 N } }\n',
      '25:30 shocks[0].seal.moving-friction: must be left out where "scale" measures it',
    ],
    [
      'a shaft that ends inside',
      '    lengths: { body-eyelet: 50 mm, shaft: 9 mm, seal-stack: 9 mm, rod-end: 8 mm }\n',
      '25:43 shocks[0].lengths.shaft: must be longer than seals, spacers and bump stop together, 9 mm, got 9 mm',
    ],
  ])('%s', (_what, lines, message, ofBuild) => {
    expect(refusal(fileWith(lines ?? '', ofBuild))).toBe(message);
  });

  // Bubbles of 1 % of π/4 14² · 22.8 − π/4 13.93² · 2.8 − 10 = 3073 mm³; a usual piston stands in.
  it('are looked at in a shock that no build uses', () => {
    const spare =
      'shocks:\n  - { name: spare, bore: 14 mm, shaft: 3 mm, stroke: 20 mm, compensator: { kind: bladder, volume: 10 mm³ } }\n';
    expect(refusal(`dashpot: 1\n${spare}`)).toBe(
      '3:99 shocks[0].compensator.volume: must leave more gas than the 141.4 mm³ that the 3 mm shaft takes from where the shock is closed, fully out, to the end of its stroke of 20 mm, got 40.73 mm³: the shock locks with the shaft 5.762 mm in',
    );
  });
});
