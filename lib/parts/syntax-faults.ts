import type { Document } from 'yaml';
import type { PartsFileProblem } from './parts-file-error.js';
import { clean } from './shown.js';
import { problemAt, type SourceTree } from './source-tree.js';

/** The faults that people make when they write YAML by hand, in words that say what to do. */
const plainWords: readonly (readonly [RegExp, string])[] = [
  [/^Tabs are not allowed/u, 'a tab is used to indent this line; use spaces'],
  [
    /^Implicit (map )?keys need/u,
    'a key needs a colon and a space after it, on the same line, as in "name: clear 350"',
  ],
  [/^Nested mappings are not allowed/u, 'a text that holds a colon and a space must be in quotes'],
  [/^Plain value cannot start with/u, 'a text that starts with this sign must be in quotes'],
  [/must start at the same column$/u, 'this line is not indented like its neighbours'],
  [/^Missing closing .quote/u, 'a quote is opened and never closed'],
  [/^A block sequence may not be used as an implicit map key/u, 'a list must start on a line of its own'],
  [/expected to end with a? ?[\]}]/u, 'a bracket is opened and never closed'],
];

/** Every fault that yaml found in the text, with its line and column. */
export function syntaxFaults(tree: SourceTree): readonly PartsFileProblem[] {
  if (tree.tooDeepAt !== undefined)
    return [problemAt(tree, tree.tooDeepAt, '', 'lists and groups are nested too deeply for a parts file')];
  return tree.documents.flatMap((document) => documentFaults(tree, document));
}

function documentFaults(tree: SourceTree, document: Document.Parsed): readonly PartsFileProblem[] {
  return document.errors.map((error) => {
    const words = plainWords.find(([pattern]) => pattern.test(error.message))?.[1];
    return problemAt(tree, error.pos[0], '', words ?? `not readable as YAML: ${clean(error.message)}`);
  });
}
