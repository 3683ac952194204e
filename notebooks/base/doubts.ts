import type { Warning } from '../../lib/base/warning.js';
import type { Block } from '../../lib/page/blocks/block.js';
import { listed } from './wording.js';

/** Warnings said once each, with the parts they are about. */
export function doubts(
  found: readonly { readonly of: string; readonly warning: Warning }[],
): readonly Block[] {
  const parts = new Map<string, { readonly message: string; readonly names: Set<string> }>();
  for (const { of, warning } of found) {
    // Numbers differ from part to part; the sentence of the first stands for all.
    const known = parts.get(warning.code);
    if (known === undefined) parts.set(warning.code, { message: warning.message, names: new Set([of]) });
    else known.names.add(of);
  }
  if (parts.size === 0)
    return [{ kind: 'text', text: 'Every law stays inside the range in which it was shown to hold.' }];
  return [
    {
      kind: 'list',
      items: [...parts.values()].map(({ message, names }) => `${listed([...names])}: ${message}`),
    },
  ];
}
