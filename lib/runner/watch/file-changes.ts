import { watch } from 'node:fs';
import path from 'node:path';

/** Editors write a file in several steps; so long they are one change [ms]. */
const settled = 25;

/**
 * Watches the files that make a page.
 *
 * @param sources - folders whose files are bundled
 * @param partsFile - absolute path of the parts file; it may stand in such a folder and is no source all the same
 * @param listener - called after each change, with whether there was a source among what changed
 * @returns ends the watching
 */
export function fileChanges(
  sources: readonly string[],
  partsFile: string,
  listener: (inSources: boolean) => void,
): () => void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let inSources = false;
  const changed = (isSource: boolean): void => {
    inSources ||= isSource;
    clearTimeout(timer);
    timer = setTimeout(() => {
      listener(inSources);
      inSources = false;
    }, settled);
  };
  const watchers = sources.map((folder) =>
    watch(folder, { recursive: true }, (_event, file) => {
      changed(file === null || path.join(folder, file) !== partsFile);
    }),
  );
  // The folder, since an editor may put a new file in the place of the old one.
  watchers.push(
    watch(path.dirname(partsFile), (_event, file) => {
      if (file === path.basename(partsFile)) changed(false);
    }),
  );
  return () => {
    clearTimeout(timer);
    for (const watcher of watchers) watcher.close();
  };
}
