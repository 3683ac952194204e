/** A small fault of a source text: what stands from `start` to `end` becomes `text`. */
export interface Fault {
  readonly file: string;
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** What a hand that slips writes for the other, in what a reader reads. */
const wordPairs: readonly (readonly [string, string])[] = [
  ['more', 'less'],
  ['most', 'least'],
  ['softer', 'harder'],
  ['soft', 'hard'],
  ['above', 'below'],
  ['slower', 'quicker'],
  ['slower', 'faster'],
  ['slow', 'fast'],
  ['thinner', 'thicker'],
  ['thin', 'thick'],
  ['rebound', 'compression'],
  ['left', 'right'],
  ['hot', 'cold'],
  ['hottest', 'coldest'],
  ['warmer', 'colder'],
  ['largest', 'smallest'],
  ['larger', 'smaller'],
  ['first', 'last'],
  ['front', 'rear'],
  ['in', 'out'],
  ['before', 'after'],
  ['heavier', 'lighter'],
  ['higher', 'lower'],
  ['longer', 'shorter'],
  ['up', 'down'],
  ['wider', 'narrower'],
];

const wordSwaps = new Map(
  wordPairs.flatMap(([one, other]) => [
    [one, other],
    [other, one],
  ]),
);

/** What it writes for the other in a formula. */
const codeSwaps = new Map([
  [' < ', ' > '],
  [' > ', ' < '],
  [' <= ', ' > '],
  [' >= ', ' < '],
  [' === ', ' !== '],
  [' !== ', ' === '],
  [' + ', ' - '],
  [' - ', ' + '],
  [' * ', ' / '],
  [' / ', ' * '],
  ['Math.max(', 'Math.min('],
  ['Math.min(', 'Math.max('],
  [' && ', ' || '],
  [' || ', ' && '],
]);

/** What ends a piece of a template; two strokes in it begin no comment. */
const inTemplate = /\\.|`|\$\{/gsu;

const token =
  /\/\/.*|\/\*[\s\S]*?\*\/| \* as |'(?:[^'\\\n]|\\.)*'|`|\$\{|[{}]| (?:<=?|>=?|===|!==|[+\-*/]|&&|\|\|) |Math\.(?:max|min)\(/gu;

/** All faults that one slip makes of a source text: a word for its opposite, a comparison, a sign. Imports and comments have none. */
export function faultsOf(file: string, source: string): readonly Fault[] {
  const faults: Fault[] = [];
  const words = (start: number, text: string): void => {
    for (const { 0: word, index } of text.matchAll(/\p{L}+/gu)) {
      const other = wordSwaps.get(word.toLowerCase());
      if (other === undefined) continue;
      const cased =
        word[0] === word[0]?.toUpperCase() ? `${other[0]?.toUpperCase()}${other.slice(1)}` : other;
      faults.push({ file, start: start + index, end: start + index + word.length, text: cased });
    }
  };
  // Each open template and each open brace, innermost last.
  const open: ('template' | 'brace')[] = [];
  for (let at = 0; ; ) {
    const inside = open.at(-1) === 'template';
    const next = inside ? inTemplate : token;
    next.lastIndex = at;
    const { 0: found, index } = next.exec(source) ?? {};
    if (found === undefined || index === undefined) return faults;
    const from = at;
    at = index + found.length;
    if (inside) {
      words(from, source.slice(from, index));
      if (found === '`') open.pop();
      else if (found === '${') open.push('brace');
    } else if (found === '`') open.push('template');
    else if (found === '{' || found === '${') open.push('brace');
    else if (found === '}') open.pop();
    else if (found.startsWith("'")) {
      if (/\s/u.test(found)) words(index, found);
    } else {
      const other = codeSwaps.get(found);
      if (other !== undefined) faults.push({ file, start: index, end: at, text: other });
    }
  }
}
