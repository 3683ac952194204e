import { firstFile } from '../../parts/first-file.js';
import { partsFile } from '../../parts/parts-file.js';
import type { Bench } from '../case/bench.js';
import type { Choices } from '../case/choices.js';
import type { FirstDraft } from '../case/first-draft.js';

/** What a document keeps in the browser between two readings. */
export interface Kept {
  /** Whether the browser keeps anything for this file. */
  readonly possible: boolean;
  /** Puts on the bench what was kept for the parts file that the document came with. */
  restore(bench: Bench): void;
  /** Keeps what lies on the bench; nothing where it is as it came. */
  save(bench: Bench): void;
  forget(): void;
}

interface Written {
  readonly choices: Choices;
  /** What was typed into the form of a first file. */
  readonly first?: FirstDraft;
  readonly file?: { readonly name: string; readonly text: string };
  /** The file that others are compared with, where the reader opened one. */
  readonly start?: { readonly name: string; readonly text: string };
}

/**
 * Opens what is kept.
 *
 * @param fingerprint - of the parts file that the document came with: another file has other changes
 */
export function openKept(fingerprint: string): Kept {
  const key = `dashpot ${fingerprint}`;
  const store = storage();
  return {
    possible: store !== undefined,
    restore(bench) {
      try {
        const written: Written = JSON.parse(store?.getItem(key) ?? '{}');
        if (written.start !== undefined) {
          bench.start = partsFile(written.start.name, written.start.text);
          bench.file = bench.start;
        }
        if (written.file !== undefined) bench.file = partsFile(written.file.name, written.file.text);
        bench.choices = written.choices ?? {};
        // What cannot be made a file of is not what the form keeps.
        firstFile(written.first?.answers ?? {});
        bench.first = written.first;
      } catch {
        // Another version of this file may have kept what this one cannot read: it begins as it came.
        bench.start = bench.origin;
        bench.file = bench.origin;
        bench.choices = {};
        bench.first = undefined;
      }
    },
    save({ origin, start, file, choices, first }) {
      const written: Written = {
        choices,
        ...(first === undefined ? {} : { first }),
        ...(file === start ? {} : { file: { name: file.name, text: file.text } }),
        ...(start === origin ? {} : { start: { name: start.name, text: start.text } }),
      };
      try {
        if (start === origin && file === origin && first === undefined && Object.keys(choices).length === 0)
          store?.removeItem(key);
        else store?.setItem(key, JSON.stringify(written));
      } catch {
        // The room is full: the reader still has the page as it is.
      }
    },
    forget: () => store?.removeItem(key),
  };
}

/** The store of the browser, where it lets this file use it. */
function storage(): Storage | undefined {
  try {
    const test = 'dashpot test';
    localStorage.setItem(test, '');
    localStorage.removeItem(test);
    return localStorage;
  } catch {
    return undefined;
  }
}
