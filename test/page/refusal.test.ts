import { describe, expect, it } from 'vitest';
import { InputError } from '../../lib/base/input-error.js';
import { IntegrationError } from '../../lib/numeric/integrator/integration-error.js';
import { ConvergenceError } from '../../lib/numeric/root-finding.js';
import { defineNotebook, type Notebook, quantity } from '../../lib/page/index.js';
import { runNotebook } from '../../lib/page/run-notebook.js';
import { notebook as compareOils } from '../../notebooks/compare-oils.js';
import { changedFile, files, fileTexts } from '../notebooks/answers.js';

const refusing = (problem: ConstructorParameters<typeof InputError>[0]) =>
  defineNotebook({
    name: 'refusing',
    order: 1,
    title: 'Refusing',
    question: 'What is refused?',
    parameters: {
      freeAir: quantity({
        dimension: 'volume',
        unit: 'ml',
        label: 'Air',
        help: 'Air.',
        default: 0,
        min: 0,
        max: 1,
        step: 1,
      }),
    },
    run: () => {
      throw new InputError(problem);
    },
  });

describe('what a law refuses while a page is made', () => {
  it.each([
    ['gas.rooms', 3.8e-9, 'm³', 'compensator must be with room for the shaft'],
    ['displacedVolume', 4.4e-8, 'm³', 'compensator must be with room for the shaft'],
    ['position', 0.005, 'm', 'closing must be a place within the stroke'],
    ['fluid.kinematicViscosity', 1.98, 'm²/s', 'oils must be liquid enough'],
    ['temperature', 243.15, 'K', 'oils must be liquid enough'],
    ['temperature', '243.15 K', '', 'oils must be liquid enough'],
    ['pistonDiameter', 0.016, 'm', 'pistons must be of sizes that stay possible'],
    ['piston.holes[1].shape.shaftSideDiameter', -0.0003, 'm', 'pistons must be of sizes'],
    ['valve.preload', 2e-4, 'm', 'valves must be discs of a piston that open at less pressure'],
    ['friction', 2e-148, 'N', 'seal must be a friction that the oil does not drown'],
    ['seal.kineticForce', 2e-148, 'N', 'seal must be a friction'],
    ['farVolume', 2.3e-9, 'm³', 'shocks must be of sizes that leave oil on both sides of the piston'],
    ['fastest', 2000, 'm/s', 'builds must be of parts through which the oil flows at the speeds'],
    ['springRate', 600, 'N/m', 'springs must be such that spring and gas carry the corner'],
  ])('%s is told by its key', (field, value, unit, told) => {
    const run = () => runNotebook(refusing({ field, value, unit, accepted: 'less' }), files.demo, {});
    expect(run).toThrow(told);
    expect(run).not.toThrow(String(value));
  });

  it('what belongs to no key is told of the builds, with what the law said behind it', () => {
    const problem = { field: 'somethingElse', value: 1.5e-9, unit: 'm³', accepted: 'less' };
    const run = () => runNotebook(refusing(problem), files.demo, {});
    expect(run).toThrow(/^builds must be of parts nearer to those of a small shock: /u);
    expect(run).not.toThrow(/somethingElse|1\.5e-9|m³/u);
    expect(run).toThrow(
      expect.objectContaining({ cause: expect.objectContaining({ field: 'somethingElse', value: 1.5e-9 }) }),
    );
  });

  it.each([
    ['a search that does not settle', new ConvergenceError('lift of a disc valve', 0, 1)],
    ['a motion that cannot be followed', new IntegrationError('too many steps', 0.1, [1])],
  ])('%s is told of the builds too', (_, cause) => {
    const stuck = {
      ...refusing({ field: '', value: 0, accepted: '' }),
      run: () => {
        throw cause;
      },
    };
    const run = () => runNotebook(stuck, files.demo, {});
    expect(run).toThrow(
      /^builds must be of parts nearer to those of a small shock: .*, got what the parts file says$/u,
    );
    expect(run).toThrow(expect.objectContaining({ cause }));
  });

  it('a temperature that a law refuses is no setting of that name', () => {
    const coldEnd = changedFile(
      fileTexts.smallest,
      /oils:\n[\s\S]*?pistons:/u,
      'oils: [{ name: stiff, base: petroleum, iso-grade: 3200, viscosity-index: -100 }]\npistons:',
    );
    expect(() => runNotebook(compareOils as unknown as Notebook, coldEnd, { coldest: '-20 °C' })).toThrow(
      /^oils must be liquid enough, .*, got what the parts file says$/u,
    );
  });

  it('a setting is told by its option, a part by its name', () => {
    const air = { field: 'freeAir', value: '0 ml', accepted: 'above 0 ml' };
    expect(() => runNotebook(refusing(air), files.demo, {})).toThrow('free-air must be above 0 ml, got 0 ml');
    const gas = { field: 'the gas of "myBuild 1.2"', value: '0.1 ml', accepted: 'more' };
    expect(() => runNotebook(refusing(gas), files.demo, {})).toThrow(
      'the gas of "myBuild 1.2" must be more, got 0.1 ml',
    );
  });

  it('what a notebook words itself is left as it is', () => {
    const problem = { field: 'slow', value: '300 mm/s', accepted: 'below fast, 200 mm/s' };
    expect(() => runNotebook(refusing(problem), files.demo, {})).toThrow(
      'slow must be below fast, 200 mm/s, got 300 mm/s',
    );
  });
});
