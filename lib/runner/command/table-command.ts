import { parseArgs } from 'node:util';
import { createOil } from '../../fluid/oil/oil.js';
import {
  assembleShock,
  type Build,
  type ForceTable,
  forceTable,
  forceTableCsv,
  forceTableModelica,
  readParts,
} from '../../parts/index.js';
import { parseQuantity } from '../../units/index.js';
import { CommandError } from './command-error.js';
import { readTextFile } from './read-text-file.js';

const formats: Readonly<Record<string, (table: ForceTable) => string>> = {
  csv: forceTableCsv,
  json: (table) => `${JSON.stringify(table)}\n`,
  modelica: forceTableModelica,
};

const usualTemperatures = ['5 °C', '20 °C', '40 °C'];
const usualFastest = '500 mm/s';
const speedsEachWay = 20;
const positions = 9;

/**
 * `table [--parts FILE] [--build NAME] [--temperature QUANTITY]… [--fastest QUANTITY] [--format csv|json|modelica]`: force against speed and
 * position of one build.
 *
 * @param args - what follows `table`
 * @param folder - where paths start
 * @param demoParts - the parts file unless one is named
 * @returns the table as text
 * @throws CommandError for an unknown option, build or format; errors of parts file and quantities as they are
 */
export async function tableText(args: readonly string[], folder: string, demoParts: string): Promise<string> {
  const { values } = parsed(args);
  const write = formats[values.format ?? 'csv'];
  if (write === undefined) throw new CommandError(`--format is one of ${Object.keys(formats).join(', ')}`);
  const file = values.parts ?? demoParts;
  const build = buildNamed(readParts(await readTextFile(folder, file), file).builds, values.build);
  const { damper } = assembleShock(build);
  return write(
    forceTable(damper, createOil(build.oil.definition), {
      temperatures: (values.temperature ?? usualTemperatures).map((text) =>
        parseQuantity(text, 'temperature'),
      ),
      fastest: parseQuantity(values.fastest ?? usualFastest, 'speed'),
      speedsEachWay,
      positions,
    }),
  );
}

function buildNamed(builds: readonly Build[], name: string | undefined): Build {
  const build = name === undefined ? builds[0] : builds.find((one) => one.name === name);
  if (build !== undefined) return build;
  const names = builds.map((one) => `"${one.name}"`).join(', ');
  throw new CommandError(
    builds.length === 0 ? 'the parts file has no build' : `no build "${name}"; there are ${names}`,
  );
}

function parsed(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      options: {
        parts: { type: 'string' },
        build: { type: 'string' },
        temperature: { type: 'string', multiple: true },
        fastest: { type: 'string' },
        format: { type: 'string' },
      },
    });
  } catch (error) {
    throw new CommandError(error instanceof Error ? error.message : String(error));
  }
}
