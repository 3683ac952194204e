/** Markup whose every text was escaped on the way in. */
export interface Html {
  readonly markup: string;
}

type Part = Html | string | number | readonly Part[];

/** Markup from a template: each text put in is escaped, markup and lists of markup go in as they are. */
export function html(fixed: TemplateStringsArray, ...parts: readonly Part[]): Html {
  return { markup: fixed.reduce((all, text, index) => `${all}${markupOf(parts[index - 1] ?? '')}${text}`) };
}

/** Markup taken as it is: only for text that this library wrote itself. */
export function trusted(markup: string): Html {
  return { markup };
}

function markupOf(part: Part): string {
  if (typeof part === 'number') return String(part);
  if (typeof part === 'string') return escapeText(part);
  return 'markup' in part ? part.markup : part.map(markupOf).join('');
}

function escapeText(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;')
    .replaceAll("'", '&#39;');
}
