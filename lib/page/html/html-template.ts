/** A text of a template, or the place of a part put in. */
export type Piece = string | { readonly hole: number };

/** An element of a template. */
export interface TemplateElement {
  readonly tag: string;
  readonly attributes: readonly (readonly [name: string, value: readonly Piece[]])[];
  readonly children: readonly TemplateNode[];
}

export type TemplateNode = Piece | TemplateElement;

/** Elements without content (WHATWG HTML, section 13.1.2), as far as pages have them. */
export const voidElements: ReadonlySet<string> = new Set(['input', 'meta', 'br', 'img']);

const known = new WeakMap<TemplateStringsArray, readonly TemplateNode[]>();
const mark = '\u0000';
const token = /<(\/?)([a-z][a-z0-9]*)((?:"[^"]*"|[^">])*)>|\0|[^<\0]+/gu;

/**
 * The nodes of a template, read once. Templates are literals of this library: each element is closed, each attribute quoted.
 *
 * @throws TypeError for a template that is not so
 */
export function parsedTemplate(fixed: TemplateStringsArray): readonly TemplateNode[] {
  const before = known.get(fixed);
  if (before !== undefined) return before;
  const nodes = parsed(fixed.join(mark));
  known.set(fixed, nodes);
  return nodes;
}

function parsed(template: string): readonly TemplateNode[] {
  const top: TemplateNode[] = [];
  const open: { readonly tag: string; readonly children: TemplateNode[] }[] = [{ tag: '', children: top }];
  let holes = 0;
  const pieces = (text: string): readonly Piece[] =>
    text
      .split(mark)
      .flatMap((piece, index): Piece[] => (index === 0 ? [piece] : [{ hole: holes++ }, piece]))
      .filter((piece) => piece !== '');
  let read = 0;
  for (const [whole, closing, tag, attributes = ''] of template.matchAll(token)) {
    read += whole.length;
    const inner = open.at(-1);
    if (tag === undefined) inner?.children.push(...pieces(whole));
    else if (closing === '/') {
      if (open.pop()?.tag !== tag) throw new TypeError(`</${tag}> closes nothing in: ${template}`);
    } else {
      const children: TemplateNode[] = [];
      const named = [...attributes.matchAll(/([a-z-]+)(?:="([^"]*)")?/gu)];
      inner?.children.push({
        tag,
        attributes: named.map(([, name = '', value = '']) => [name, pieces(value)] as const),
        children,
      });
      if (!voidElements.has(tag)) open.push({ tag, children });
    }
  }
  if (open.length !== 1 || read !== template.length) throw new TypeError(`not closed: ${template}`);
  return top;
}
