import type { Notebook } from '../../page/notebook.js';
import { asItCame, type Bench } from '../case/bench.js';
import { failureText } from '../case/failure.js';
import { arrive, caseWanted, openSession } from '../case/session.js';
import { pageWords } from './page-words.js';

/** What a page says for what lies on the bench. */
export interface Answer {
  readonly answer: string;
  /** All other sentences of the page; none where they have not been asked for yet. */
  readonly words: readonly string[];
}

/** The answers of all pages. */
export interface Answers {
  /** What a page says now; nothing while that is still to be worked out. */
  of(name: string): Answer | undefined;
  /** Whether all are worked out, with their words. */
  complete(): boolean;
  /** Works out what is missing, a page at a time, while the reader may go on. */
  refresh(withWords: boolean): void;
}

/**
 * The answers of the pages of a document.
 *
 * @param notebooks - the pages
 * @param bench - what they work on
 * @param printed - the answers that the document came with, for the bench as it was
 * @param progress - called after each answer
 */
export function answers(
  notebooks: readonly Notebook[],
  bench: Bench,
  printed: ReadonlyMap<string, Pick<Answer, 'answer'>>,
  progress: () => void,
): Answers {
  const known = new Map<string, Answer>();
  let made = { file: bench.file, choices: bench.choices };
  let wordsAsked = false;
  let busy = false;
  const forgetOld = (): void => {
    if (made.file === bench.file && made.choices === bench.choices) return;
    made = { file: bench.file, choices: bench.choices };
    known.clear();
  };
  const of = (name: string): Answer | undefined => {
    forgetOld();
    const before = asItCame(bench) ? printed.get(name)?.answer : undefined;
    return known.get(name) ?? (before === undefined ? undefined : { answer: before, words: [] });
  };
  const missing = (): Notebook | undefined =>
    notebooks.find(({ name }) => (wordsAsked ? !known.has(name) : of(name) === undefined));
  const work = (): void => {
    forgetOld();
    const next = missing();
    busy = next !== undefined;
    if (next === undefined) return;
    known.set(next.name, answerOf(next, bench));
    progress();
    later(work);
  };
  return {
    of,
    complete: () => {
      forgetOld();
      return notebooks.every(({ name }) => known.has(name));
    },
    refresh(withWords) {
      wordsAsked ||= withWords;
      if (busy) return;
      busy = true;
      later(work);
    },
  };
}

function answerOf(notebook: Notebook, bench: Bench): Answer {
  try {
    const session = openSession(notebook, bench);
    arrive(session);
    const { page } = caseWanted(session);
    return { answer: page.answer, words: pageWords(page) };
  } catch (error) {
    return { answer: `With what you chose: ${failureText(error)}`, words: [] };
  }
}

/** A task of its own, so that what the reader does meanwhile comes first. */
function later(work: () => void): void {
  setTimeout(work, 0);
}
