import { InputError } from '../../../lib/base/input-error.js';
import { IntegrationError } from '../../../lib/numeric/integrator/integration-error.js';
import { ConvergenceError } from '../../../lib/numeric/root-finding.js';
import { allBlocks, type Notebook, optionName, type Page, ParameterError } from '../../../lib/page/index.js';
import type { ParameterTexts } from '../../../lib/page/parameters/read-parameters.js';
import { runNotebook } from '../../../lib/page/run-notebook.js';
import type { Parts } from '../../../lib/parts/index.js';

/** What came of one notebook on one file. */
export interface Outcome {
  readonly notebook: string;
  readonly refused?: string;
  readonly faults: readonly string[];
  readonly seconds: number;
}

/** Keys of the parts file that a refusal may name, beside the settings of the page. */
const fileKeys =
  /\b(spring|springs|builds?|pistons?|shocks?|oils?|shop|bottle|corner|timed|measurements|tolerances|day|holes?|diameter|bore|shaft|stroke|closing|compensator|inside|gas|viscosity|seal|wanted|motion-ratio|mass|quantity)\b/u;

/** Units of the library rather than those of the bench, and names from its code. */
const codeWords = /\d m(?:³|²|²\/s)?(?=[\s,;.)]|$)|\bPa\b|\bN\/m\b|\d K\b|[a-z][A-Z]|\[\d+\]|\d{7,}/u;

const noNumber = /\bNaN\b|\bundefined\b|Infinity|\[object/u;

/** Runs a notebook, as it starts unless it is set otherwise, and says all that a reader should never see. */
export function outcomeOf(notebook: Notebook, parts: Parts, texts: ParameterTexts = {}): Outcome {
  const start = process.cpuUsage();
  const done = (rest: Pick<Outcome, 'faults' | 'refused'>): Outcome => {
    const { user, system } = process.cpuUsage(start);
    return { notebook: notebook.name, seconds: (user + system) / 1e6, ...rest };
  };
  try {
    return done({ faults: pageFaults(runNotebook(notebook, parts, texts).page) });
  } catch (error) {
    if (!(error instanceof InputError || error instanceof ParameterError)) {
      const stack = error instanceof Error ? (error.stack ?? '') : '';
      return done({ faults: [`throws ${String(error)} ${stack.split('\n').slice(1, 6).join(' | ')}`] });
    }
    // A search or an integration that does not settle is worded as a refusal, and is none.
    const { cause } = error;
    const gaveUp =
      cause instanceof ConvergenceError || cause instanceof IntegrationError
        ? [`gives up: ${cause.message}`]
        : [];
    return done({ refused: error.message, faults: [...gaveUp, ...refusalFaults(notebook, error.message)] });
  }
}

function refusalFaults({ parameters }: Notebook, message: string): readonly string[] {
  const options = Object.keys(parameters).map(optionName);
  const named = fileKeys.test(message) || options.some((option) => message.includes(option));
  return [
    ...(named ? [] : [`refuses without a key: ${message}`]),
    ...(codeWords.test(message) ? [`refuses in words of the code: ${message}`] : []),
    ...(noNumber.test(message) ? [`refuses with no number: ${message}`] : []),
  ];
}

/** Claims that may well be untrue of an extreme shock, so that a failed one is what the page has to say: the shaft does lock, the textbook formula is left behind, thin oil lets weights run
 * too fast for a stopwatch and two of them. */
const mayFail = [
  'The pressure drops by hand are as far apart',
  'The viscosities are as far apart as the slow forces',
  'Slow damping is that of the textbook formulas',
  'Two weights give the friction of both shocks back',
];

/** Faults that a reader would see on a page. */
export function pageFaults(page: Page): readonly string[] {
  const failed = allBlocks(page).flatMap((block) =>
    block.kind === 'check' && !block.passed && !mayFail.some((claim) => block.claim.startsWith(claim))
      ? [`check failed: ${block.claim}: ${block.detail}`]
      : [],
  );
  return [...failed, ...wrongIn(page, '')];
}

/** Texts with a word of the code in them, and numbers that are none, anywhere in plain data. */
function wrongIn(value: unknown, path: string): readonly string[] {
  if (typeof value === 'number') return Number.isFinite(value) ? [] : [`${path} is ${value}`];
  if (typeof value === 'string') return noNumber.test(value) ? [`${path}: ${value}`] : [];
  if (ArrayBuffer.isView(value)) return wrongIn(Array.from(value as Float64Array), path);
  if (Array.isArray(value))
    return value.flatMap((one, place) => wrongIn(one, `${path}[${place}]`)).slice(0, 3);
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value)
    .flatMap(([key, one]) => wrongIn(one, `${path}.${key}`))
    .slice(0, 3);
}
