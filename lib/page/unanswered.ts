import { requireKind, requireRecord } from '../base/checks.js';
import type { Page } from './blocks/page.js';

/**
 * The page of a notebook that the parts file does not say enough for.
 *
 * @param reason - what the notebook was refused with
 * @returns a page that says what is missing
 *
 * @public
 */
export function unansweredPage(reason: Error): Page {
  requireRecord(reason, 'reason');
  requireKind(reason.message, 'string', 'reason.message');
  return {
    answer: 'These parts do not say enough to answer this yet.',
    blocks: reason.message.split('\n').map((text) => ({ kind: 'text', text }) as const),
    sources: [],
  };
}
