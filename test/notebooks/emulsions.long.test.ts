import { expect, it } from 'vitest';
import { allBlocks } from '../../lib/page/index.js';
import { notebook as match } from '../../notebooks/match.js';
import { notebook as whatToDrill } from '../../notebooks/what-to-drill.js';
import { changedFile, fileTexts, pageOf } from './answers.js';

// A quarter of gas in the oil, which makes a push harder and a pull softer than the oil alone by more than the checks allow.
const emulsion = changedFile(
  fileTexts.demo,
  /compensator: \{ kind: air-pocket \}\n {4}closing: .*/u,
  'compensator: { kind: emulsion, gas-fraction: 0.25 }\n    closing: { bleed: once }',
);

it('match: the oil found for pushes alone, which the gas makes harder, is the best of those tried', () => {
  const found = allBlocks(pageOf(match, emulsion, { matters: 'fast' })).filter(
    (block) => block.kind === 'check' && block.claim.startsWith('Of 121 oils around it'),
  );
  expect(found).toHaveLength(1);
  for (const block of found) expect(block.kind === 'check' && block.passed).toBe(true);
});

it('what to drill: claims nothing of whole forces where gas is in the oil', () => {
  const claims = allBlocks(pageOf(whatToDrill, emulsion)).flatMap((block) =>
    block.kind === 'check' ? [block] : [],
  );
  expect(claims.every(({ passed }) => passed)).toBe(true);
  expect(claims.some(({ claim }) => claim.startsWith('The whole law'))).toBe(false);
});
