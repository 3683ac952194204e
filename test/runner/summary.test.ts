import { describe, expect, it } from 'vitest';
import type { CheckBlock } from '../../lib/page/index.js';
import type { RenderedNotebook } from '../../lib/runner/build/render-notebook.js';
import { summary } from '../../lib/runner/summary.js';

const check = (claim: string, passed: boolean, consistency?: boolean): CheckBlock => ({
  kind: 'check',
  claim,
  passed,
  detail: '1',
  ifFailed: 'Look again',
  ...(consistency === undefined ? {} : { consistency }),
});
const said = (...blocks: readonly CheckBlock[]) =>
  summary({ page: { answer: 'So.', blocks, sources: [] } } as unknown as RenderedNotebook);

describe('what the command line says of a page', () => {
  it('counts what was compared with something else apart from what was compared with itself', () => {
    expect(said(check('a', true), check('b', false), check('c', true, true))).toBe(
      '0 figures, 1 of 2 checks passed, 1 of 1 consistent\n  check failed: b',
    );
    expect(said(check('a', true, false))).toBe('0 figures, 1 of 1 checks passed');
  });

  it('names no checks where there are none', () => {
    expect(said(check('c', false, true))).toBe('0 figures, 0 of 1 consistent\n  check failed: c');
    expect(said()).toBe('0 figures');
  });
});
