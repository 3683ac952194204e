import { describe, expect, it } from 'vitest';
import { fluidRoom } from '../../lib/fill/chamber/chamber.js';
import { closeShock } from '../../lib/fill/chamber/closed-shock.js';
import { fillOf, lengthsOf } from '../../lib/parts/fill-of.js';
import { type Build, PartsFileError, readParts } from '../../lib/parts/index.js';
import { changed, smallFile } from './small-file.js';

const seal = '    gas: { volume: 0.9 ml, pressure: 1 atm }\n';

/** The small file with more said of its shock. */
function withShock(lines: string): string {
  return changed(seal, `${seal}${lines}`);
}

function buildOf(text: string): Build {
  const [build] = readParts(text).builds;
  if (build === undefined) throw new Error('the file has no build');
  return build;
}

function refusal(text: string): string {
  try {
    readParts(text, 'my.yaml');
  } catch (error) {
    if (error instanceof PartsFileError) return error.message.replaceAll('my.yaml:', '');
    throw error;
  }
  return 'accepted';
}

const inside = '    inside: { length: 34 mm, cap-volume: 0.5 ml, solid-volume: 0.3 ml }\n';

describe('a shock with its inside', () => {
  it('is read in SI', () => {
    const { shock } = buildOf(
      withShock(`${inside}    compensator: { kind: bladder, volume: 0.8 ml, stiffness: 40 kPa/ml }\n`),
    );
    expect(shock.inside).toEqual({ length: 0.034, capVolume: 0.5e-6, solidVolume: 0.3 / 1e6 });
    expect(shock.compensator).toEqual({ kind: 'bladder', volume: 0.8 / 1e6, stiffness: 40e9, vented: false });
  });

  it.each([
    ['air-pocket, volume: 0.5 ml', { kind: 'air-pocket', volume: 0.5e-6 }],
    [
      'vented-bladder, volume: 0.5 ml, stiffness: 1 bar/ml',
      { kind: 'bladder', volume: 0.5e-6, stiffness: 1e11, vented: true },
    ],
    [
      'foam, volume: 0.5 ml, gas-fraction: 0.9',
      { kind: 'foam', volume: 0.5e-6, gasFraction: 0.9, stiffness: 0 },
    ],
    ['emulsion, gas-fraction: 0.1', { kind: 'emulsion', gasFraction: 0.1 }],
    ['none', { kind: 'none' }],
  ])('%s', (written, expected) => {
    expect(buildOf(withShock(`    compensator: { kind: ${written} }\n`)).shock.compensator).toEqual(expected);
  });

  it('without more, is as long as oil and gas need, and closes with the shaft fully out', () => {
    const { chamber, compensator, closeAt, assumptions } = fillOf(buildOf(smallFile));
    expect(fluidRoom(chamber, 0)).toBeCloseTo(4.1e-6, 15);
    expect(closeAt).toBe(0);
    expect(assumptions).toHaveLength(2);
    const closing = { position: 0, temperature: 293.15, ambientPressure: 101_325, freeAir: 0 };
    expect(closeShock(chamber, compensator, closing).oilVolume).toBeCloseTo(3.2e-6, 15);
  });

  it('takes the piston alone for the solid volume where that is left out', () => {
    const { chamber } = fillOf(buildOf(withShock('    inside: { length: 34 mm }\n')));
    // π/4 (11.95² − 2 · 1.7²) · 2.5 = 269.04 mm³
    expect(chamber.solidVolume * 1e9).toBeCloseTo(269.04, 2);
  });

  it('closes where the build says', () => {
    const text = `${smallFile}    close-at: 10 mm\n`;
    expect(fillOf(buildOf(text)).closeAt).toBe(0.01);
    // The gas of the file stands at full extension: 900 − 7.0686 · 10 mm³ are left of it there.
    expect(fillOf(buildOf(text)).compensator).toMatchObject({ kind: 'air-pocket' });
    expect((fillOf(buildOf(text)).compensator as { volume: number }).volume * 1e9).toBeCloseTo(829.31, 2);
  });
});

describe('lengths', () => {
  const lengths =
    '    lengths: { body-eyelet: 50 mm, shaft: 42 mm, seal-stack: 9 mm, rod-end: 8 mm, droop-spacers: 1 mm }\n';

  it('are read, with the piston travel from the inside', () => {
    const { shock, piston } = buildOf(withShock(inside + lengths));
    expect(lengthsOf(shock, piston)).toEqual({
      bodyEyelet: 0.05,
      shaft: 0.042,
      sealStack: 0.009,
      rodEnd: 0.008,
      innerSpacers: 0.001,
      bumpStop: 0,
      pistonTravel: 0.034 - 0.0025,
    });
    expect(fillOf(buildOf(withShock(inside + lengths))).chamber.shaftInside).toBe(0.001);
  });

  it('without the inside, let the piston travel the stroke', () => {
    const { shock, piston } = buildOf(withShock(lengths));
    expect(lengthsOf(shock, piston)?.pistonTravel).toBeCloseTo(0.025, 12);
    expect(lengthsOf(buildOf(smallFile).shock, piston)).toBeUndefined();
  });
});

describe('seals measured on a scale', () => {
  it('half the difference is the friction', () => {
    const { seal } = buildOf(
      withShock('    seal: { scale: { pushing-in: 0.55 N, letting-out: 0.05 N } }\n'),
    ).shock;
    expect(seal.kineticForce).toBeCloseTo(0.25, 12);
    expect(seal.breakawayForce).toBeCloseTo(0.375, 12);
  });
});

describe('refused', () => {
  it.each([
    [
      'a body shorter than the stroke',
      withShock('    inside: { length: 20 mm }\n'),
      /inside\.length: must be at least the stroke and the droop spacers, 24 mm, got 20 mm/u,
    ],
    [
      'a compensator larger than the body',
      withShock(`${inside}    compensator: { kind: foam, volume: 5 ml, gas-fraction: 0.9 }\n`),
      /compensator\.volume: must be less than the inside of 4\.345 ml, got 5 ml/u,
    ],
    [
      'solid parts larger than the body',
      withShock('    inside: { length: 34 mm, solid-volume: 4 ml }\n'),
      /inside\.solid-volume: must be less than/u,
    ],
    [
      'a bladder without volume',
      withShock('    compensator: { kind: bladder }\n'),
      /compensator: needs "volume" where the kind is bladder/u,
    ],
    [
      'a stiffness of nothing',
      withShock('    compensator: { kind: none, stiffness: 4 kPa/ml }\n'),
      /compensator\.stiffness: has no meaning where the kind is none/u,
    ],
    [
      'a slack vented bladder',
      withShock('    compensator: { kind: vented-bladder, volume: 1 ml, stiffness: 0 kPa/ml }\n'),
      /stiffness: must be greater than 0 kPa\/ml/u,
    ],
    [
      'an unknown kind',
      withShock('    compensator: { kind: balloon }\n'),
      /compensator\.kind: must be air-pocket or bladder/u,
    ],
    [
      'a shaft that ends inside',
      withShock('    lengths: { body-eyelet: 50 mm, shaft: 9 mm, seal-stack: 9 mm, rod-end: 8 mm }\n'),
      /lengths\.shaft: must be longer than seals, spacers and bump stop together, 9 mm, got 9 mm/u,
    ],
    [
      'a scale read the wrong way round',
      withShock('    seal: { scale: { pushing-in: 0.1 N, letting-out: 0.5 N } }\n'),
      /seal\.scale\.letting-out: must be at most the reading while pushing in/u,
    ],
    [
      'friction said twice',
      withShock('    seal: { moving-friction: 1 N, scale: { pushing-in: 0.5 N, letting-out: 0.1 N } }\n'),
      /seal\.moving-friction: must be left out where "scale" measures it/u,
    ],
    [
      'a cap closed past the stroke',
      `${smallFile}    close-at: 25 mm\n`,
      /builds\[0\]\.close-at: must be at most the stroke of 24 mm of "short 12", got 25 mm/u,
    ],
  ])('%s', (_what, text, message) => {
    expect(refusal(text)).toMatch(message);
  });
});
