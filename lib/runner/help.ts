import { acceptedText, defaultText, type Notebook, optionName, type Parameter } from '../page/index.js';

/**
 * Help on the command: how to call it, and the notebooks.
 *
 * @param calledAs - how the user calls it
 */
export function generalHelp(notebooks: readonly Notebook[], calledAs: string): string {
  const width = Math.max(...notebooks.map(({ name }) => name.length));
  const uses = [
    ['render', 'every notebook with the demo parts'],
    ['render --parts FILE', 'every notebook with your own'],
    ['render NOTEBOOK [--parts FILE] [--PARAMETER VALUE]…', 'one notebook'],
    ['render NOTEBOOK --help', 'the parameters of a notebook'],
    ['render MY-NOTEBOOK.ts [--parts FILE]', 'a notebook of your own'],
    ['--new FILE', 'asks for your first parts file, step by step'],
    ['check FILE [--json]', 'says whether a parts file can be read, and what is wrong with it'],
    [
      'table [--parts FILE] [--build NAME] [--temperature "20 °C"]… [--fastest "500 mm/s"] [--format csv|json|modelica]',
      'force against speed and position of one build',
    ],
  ] as const;
  return `Usage, where "render" may be left out:
${uses.map(([use, does]) => `  ${calledAs} ${use}\n      ${does}`).join('\n')}

Notebooks:
${notebooks.map(({ name, question }) => `  ${name.padEnd(width)}  ${question}`).join('\n')}

Options:
${ownOptions}`;
}

/**
 * Help on one notebook: its question and its parameters with units, ranges and what they are unless given.
 *
 * @param calledAs - how the user asks for this notebook
 */
export function notebookHelp({ title, question, parameters }: Notebook, calledAs: string): string {
  const lines = Object.entries(parameters).map(([key, parameter]) => parameterHelp(key, parameter));
  return `${title}
${question}

Usage: ${calledAs} [--parts FILE] [--PARAMETER VALUE]…

Parameters:
${lines.join('\n')}

Options:
${ownOptions}`;
}

const ownOptions = `  --parts FILE  your own parts file, YAML or JSON; the demo parts unless given
  --dyno FILE   a dyno file (columns of time and travel, or speed, and force, each with its unit); goes with
                --dyno-temperature "22 °C", the oil, and where needed --dyno-build NAME, --dyno-shock NAME and
                --dyno-zero-at "4 mm", how far the shaft is in where the travel is 0
  --stroke FILE  a recording of shaft travel (columns of time and travel, each with its unit) for bench-stroke; with
                --stroke-zero-at "4 mm", how far the shaft is in where the travel is 0
  --ground FILE  height of the ground under a wheel (columns of time and height, each with its unit) for landing
  --use measured  take builds as their measurements say, on every page, and say so; stated unless given
  --out DIR     folder for the pages; out unless given
  --help        this text`;

function parameterHelp(key: string, parameter: Parameter): string {
  const more = parameter.kind === 'parts' ? ' (repeat the option for several)' : '';
  return `  --${optionName(key)}  ${parameter.label}. ${parameter.help}
      ${acceptedText(parameter)}${more}; ${defaultText(parameter)} unless given`;
}
