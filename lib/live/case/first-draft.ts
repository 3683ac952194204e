import {
  answerOf,
  type FirstAnswers,
  type FirstKey,
  type FirstQuestion,
  firstQuestions,
} from '../../parts/first-questions.js';

/** Where a reader is in the form of a first file. */
export interface FirstDraft {
  readonly answers: FirstAnswers;
  /** The step that is shown: a question, or what was answered. */
  readonly at: FirstKey | 'end';
}

/** The form before anything is answered. */
export const emptyDraft: FirstDraft = { answers: {}, at: 'bore' };

/** The place of the step among all steps, and its question; none where what was answered is shown. */
export function stepOf({ answers, at }: FirstDraft): {
  readonly question: FirstQuestion | undefined;
  readonly index: number;
  readonly count: number;
} {
  const questions = firstQuestions(answers);
  const index = questions.findIndex(({ key }) => key === at);
  return { question: questions[index], index, count: questions.length };
}

/** A draft one step on or back. */
export function stepped(draft: FirstDraft, by: 1 | -1): FirstDraft {
  const questions = firstQuestions(draft.answers);
  const { index, count } = stepOf(draft);
  const from = index < 0 ? count : index;
  return { ...draft, at: questions[Math.max(0, from + by)]?.key ?? 'end' };
}

/** What was answered, question by question. */
export function answered({ answers }: FirstDraft): readonly (readonly [label: string, text: string])[] {
  return firstQuestions(answers).flatMap(({ key, label }) => {
    const text = answerOf(answers, key);
    return text === '' ? [] : [[label, text] as const];
  });
}
