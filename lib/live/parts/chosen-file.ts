import { visibleText } from '../../base/visible-text.js';

/** The file that a reader chose, taken out of its control so that the same one can be chosen again after it was changed on disk. */
export async function chosenFile(
  input: HTMLInputElement,
): Promise<{ readonly name: string; readonly bytes: Uint8Array } | undefined> {
  const [chosen] = input.files ?? [];
  if (chosen === undefined) return undefined;
  const bytes = new Uint8Array(await chosen.arrayBuffer());
  input.value = '';
  return { name: visibleText(chosen.name), bytes };
}
