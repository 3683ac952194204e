import { clean } from './literal.js';
import type { PartsFileProblem } from './parts-file-error.js';
import { problemAt, type SourceTree } from './source-tree.js';

/**
 * The faults that people make when they write YAML by hand, in words that say what to do. Those that echo make yaml
 * misread the lines after them, so that nothing it then says of these is worth repeating.
 */
const plainWords: readonly (readonly [pattern: RegExp, words: string, echoes?: 'echoes'])[] = [
  [/^Tabs are not allowed/u, 'a tab is used to indent this line; use spaces', 'echoes'],
  [
    /^Implicit (map )?keys need/u,
    'a key needs a colon and a space after it, on the same line, as in "name: clear 350"',
  ],
  [
    /^Nested mappings are not allowed/u,
    'a colon and a space begin a value; put a text that holds them in quotes, and begin keys at the column of their neighbours',
  ],
  [/^Plain value cannot start with/u, 'a text that starts with this sign must be in quotes'],
  [/must start at the same column$/u, 'this line is not indented like its neighbours', 'echoes'],
  [
    /^Sequence item without - indicator/u,
    'this line is neither an entry of the list above nor indented as part of one',
    'echoes',
  ],
  [/^Missing closing .quote/u, 'a quote is opened and never closed'],
  [/^A block sequence may not be used as an implicit map key/u, 'a list must start on a line of its own'],
  [
    /expected to end with|sufficiently indented/u,
    'a bracket is opened and not closed, or what is in it is not indented',
  ],
];

/** The faults that yaml found in the text: the first of each line, and after one that echoes only its like. */
export function syntaxFaults(tree: SourceTree): readonly PartsFileProblem[] {
  if (tree.refused.length > 0) return tree.refused;
  const faults = tree.documents
    .flatMap(({ errors }) => errors)
    .sort((a, b) => a.pos[0] - b.pos[0])
    .map(({ message, pos }) => {
      const [, words, echoes] = plainWords.find(([pattern]) => pattern.test(message)) ?? [];
      const problem = problemAt(
        tree.lines,
        pos[0],
        '',
        words ?? `not readable as YAML: ${clean(message, 200)}`,
      );
      return { problem, echoes };
    });
  const echo = faults.find(({ echoes }) => echoes !== undefined)?.problem;
  const lines = new Set<number>();
  return faults.flatMap(({ problem }) => {
    if (echo !== undefined && problem.line >= echo.line && problem.message !== echo.message) return [];
    if (lines.has(problem.line)) return [];
    lines.add(problem.line);
    return [problem];
  });
}
