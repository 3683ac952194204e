import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { damperModel } from '../../lib/damper/damper-model.js';
import { lockPosition, pressureInside } from '../../lib/fill/chamber/pressure-inside.js';
import { fluidAt } from '../../lib/fluid/oil/fluid-at.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { gasPressure } from '../../lib/gas/gas-state.js';
import { assembleShock, benchSteps } from '../../lib/parts/index.js';
import { buildWith, inside } from './one-statement.js';

const kinds = [
  'air-pocket, volume: 0.9 ml',
  'air-pocket, volume: 0.7 ml, side: shaft-side, exponent: 1.3',
  'bladder, volume: 0.8 ml, stiffness: 15 kPa/ml',
  'bladder, volume: 0.8 ml',
  'vented-bladder, volume: 0.6 ml, stiffness: 40 kPa/ml',
  'foam, volume: 1 ml, gas-fraction: 0.85, stiffness: 5 kPa/ml',
  'emulsion, gas-fraction: 0.12',
  'none',
];
describe('one gas', () => {
  it.each(kinds)('force and fill see one pressure at every position and temperature: %s', (kind) => {
    const build = buildWith(`${inside}    compensator: { kind: ${kind} }\n`);
    const { damper, closed } = assembleShock(build);
    expect(damper.gas).toBe(closed.gas);
    const oil = createOil(build.oil.definition);
    const part = fc.double({ min: 0, max: 1, noNaN: true });
    fc.assert(
      fc.property(part, fc.double({ min: 258, max: 333, noNaN: true }), (place, temperature) => {
        const fluid = fluidAt(oil, temperature);
        const model = damperModel(damper, fluid);
        const condition = {
          temperature,
          oilExpansion: fluidAt(oil, closed.closing.temperature).density / fluid.density,
          polytropicExponent: closed.gas.polytropicExponent,
        };
        const position = place * damper.stroke;
        if (lockPosition(closed, condition) <= position) return;
        const seen = gasPressure(model.gas, model.shaftArea * position);
        const filled = pressureInside(closed, position, condition);
        expect(Math.abs(seen - filled)).toBeLessThanOrEqual(1e-9 * (filled + 1));
      }),
    );
  });
});

describe('how much gas there is', () => {
  const filled = (lines: string) => assembleShock(buildWith(lines));
  const air = '    closing: { free-air: 0 ml }\n';

  it('is the volume of the compensator, and bubbles beside it', () => {
    const { closed, known } = filled(
      `${inside}    compensator: { kind: bladder, volume: 0.8 ml, stiffness: 10 kPa/ml }\n    closing: { free-air: 20 mm³ }\n`,
    );
    expect(closed.gas.rooms).toMatchObject([{ stiffness: 1e10, vented: false }, { stiffness: 0 }]);
    expect(closed.gas.rooms[0]?.volume).toBeCloseTo(0.8e-6, 15);
    expect(closed.gas.rooms[1]?.volume).toBeCloseTo(20e-9, 15);
    expect(closed.oilVolume * 1e9).toBeCloseTo(4045.31 - 820, 1);
    expect(known).toEqual({ gas: true, inside: true, oilVolume: true, closing: false, seal: false });
  });

  it('is what the inside leaves beside the oil', () => {
    const { closed } = filled(`${inside}    oil-volume: 3.2 ml\n    compensator: { kind: air-pocket }\n`);
    expect(closed.gasVolume * 1e9).toBeCloseTo(4045.31 - 3200, 1);
    expect(closed.oilVolume * 1e9).toBeCloseTo(3200, 6);
  });

  it('is what was drawn off and the hollow of the cap', () => {
    const { closed } = filled(`${inside}    closing: { drawn-off: 0.3 ml }\n`);
    expect(closed.gasVolume * 1e9).toBeCloseTo(800, 6);
    const { closed: pushed } = filled(`${inside}    closing: { drawn-off: 0.3 ml, shaft: 10 mm }\n`);
    expect(pushed.gasVolume * 1e9).toBeCloseTo(800 - 70.686, 2);
  });

  it('leaves poured oil less what was drawn off', () => {
    const { closed, known, assumptions } = filled('    closing: { poured: 3.5 ml, drawn-off: 0.5 ml }\n');
    expect(closed.oilVolume * 1e9).toBeCloseTo(3000, 6);
    expect(closed.gasVolume * 1e9).toBeCloseTo(500, 6);
    // Full to the rim, with nothing under the cap.
    expect(closed.chamber.capVolume * 1e9).toBeCloseTo(0, 6);
    expect(known.gas).toBe(false);
    expect(assumptions[1]).toBe(
      'The hollow of the cap is not given: what was drawn off is taken as all that makes room.',
    );
  });

  it('and what was drawn off leave the hollow of the cap, where nobody measured it', () => {
    const { closed, known } = filled(
      '    compensator: { kind: air-pocket, volume: 0.9 ml }\n    closing: { poured: 3.5 ml, drawn-off: 0.3 ml, free-air: 0 ml }\n',
    );
    expect(closed.gasVolume * 1e9).toBeCloseTo(900, 6);
    expect(closed.oilVolume * 1e9).toBeCloseTo(3200, 6);
    expect(closed.chamber.capVolume * 1e9).toBeCloseTo(600, 6);
    expect(known.gas).toBe(true);
  });

  it('is twice what the shaft displaces where nothing is said, a guess', () => {
    const { closed, known, assumptions } = filled(air);
    expect(closed.gasVolume * 1e9).toBeCloseTo(2 * 169.646, 2);
    expect(known.gas).toBe(false);
    expect(assumptions).toEqual([
      'What makes room for the shaft is not given: an air pocket under the cap is assumed.',
      'How much gas makes room is not given: 0.339 ml is a guess, twice what the shaft displaces.',
      'The inside of the body is not measured: 26.5 mm long and 2.73 ml of oil are a guess, as short as stroke and piston allow.',
      'How it was closed is not given: filled to a level with the shaft fully out, as a cap over an air pocket usually is (common practice, no source) is assumed.',
      'The temperature at which it was closed is not given: 20 °C is a guess.',
      'The oil holds 0.488 ml of air dissolved, as after standing open (data sheets, from memory); it comes out only while a shock stands.',
      'Friction of the seals is not given: 0.1 N to 1 N, typically 0.3 N, while moving, and half as much again after rest, is a guess (common practice, no source).',
    ]);
  });

  it('of foam is a part of it, of an emulsion a part of the whole', () => {
    const foam = filled(`    compensator: { kind: foam, volume: 1 ml, gas-fraction: 0.9 }\n${air}`);
    expect(foam.closed.gasVolume * 1e9).toBeCloseTo(900, 6);
    const emulsion = filled(`${inside}    compensator: { kind: emulsion, gas-fraction: 0.1 }\n`);
    expect(emulsion.closed.gasVolume * 1e9).toBeCloseTo(387.57, 2);
    const poured = filled('    oil-volume: 3.6 ml\n    compensator: { kind: emulsion, gas-fraction: 0.1 }\n');
    expect(poured.closed.gasVolume * 1e9).toBeCloseTo(400, 6);
  });

  it('said twice, the volume of the compensator counts', () => {
    const { closed, assumptions } = filled(
      `${inside}    oil-volume: 3.2 ml\n    compensator: { kind: air-pocket, volume: 0.9 ml }\n${air}`,
    );
    expect(closed.gasVolume * 1e9).toBeCloseTo(900, 6);
    expect(assumptions[0]).toBe(
      'What makes room is said twice, as 0.9 ml and as 0.845 ml: the first counts.',
    );
  });

  it('is the residual air where nothing makes room, and each further bleed takes half', () => {
    const left = (bleed: string) =>
      filled(`${inside}    compensator: { kind: none }\n    closing: { bleed: ${bleed} }\n`).closed
        .gasVolume * 1e9;
    // 2, 1, 0.5 and 0.25 % of 3875.66 mm³.
    expect(left('never')).toBeCloseTo(77.51, 2);
    expect(left('once')).toBeCloseTo(38.76, 2);
    expect(left('twice')).toBeCloseTo(19.38, 2);
    expect(left('three times')).toBeCloseTo(9.69, 2);
  });
});

describe('where it was closed', () => {
  const closed = (kind: string, ofBuild = '') =>
    assembleShock(buildWith(`    compensator: { kind: ${kind} }\n`, ofBuild)).habit;

  it.each([
    ['air-pocket', 0],
    ['bladder', 0],
    ['vented-bladder', 0],
    ['foam', 0],
    ['emulsion', 0.024],
    ['none', 0.024],
  ])('%s has its habit', (kind, position) => {
    expect(closed(kind)).toMatchObject({ position, assumed: true });
    expect(closed(kind).words).toMatch(/\(common practice, no source\)$/u);
  });

  it('follows the build before the shock, and the page before both', () => {
    const lines = '    closing: { shaft: 5 mm, temperature: 15 °C }\n';
    expect(assembleShock(buildWith(lines)).habit).toMatchObject({ position: 0.005, assumed: false });
    const build = buildWith(lines, '    close-at: fully in\n');
    expect(assembleShock(build).habit).toMatchObject({
      position: 0.024,
      words: 'closed with the shaft fully in',
    });
    const { closed: chosen } = assembleShock(build, { closeAt: 0.01, temperature: 290, freeAir: 1e-8 });
    expect(chosen.closing).toMatchObject({ position: 0.01, temperature: 290, freeAir: 1e-8 });
    expect(assembleShock(build).closed.closing.temperature).toBe(288.15);
  });

  it('a shock closed fully in stands below the pressure outside with its shaft out', () => {
    const { closed: bled } = assembleShock(
      buildWith(`${inside}    compensator: { kind: none }\n    closing: { free-air: 40 mm³ }\n`),
    );
    // Boyle: 101325 · 40 / (40 + 169.646)
    expect(pressureInside(bled, 0)).toBeCloseTo(19_333, 0);
    expect(pressureInside(bled, 0.024)).toBeCloseTo(101_325, 3);
  });
});

it('says for everything unknown how to find it out at the bench', () => {
  for (const quantity of ['gas', 'inside', 'oilVolume', 'closing', 'seal'] as const)
    expect(benchSteps(quantity).length).toBeGreaterThan(0);
  expect(benchSteps('gas')[0]).toMatch(/away from your face/u);
});
