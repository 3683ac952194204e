import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { readParameterValues } from '../../lib/page/index.js';
import { readParts } from '../../lib/parts/index.js';
import { behaviour } from '../../notebooks/build-sheet/behaviour.js';
import { sheetNumbers } from '../../notebooks/build-sheet/numbers.js';
import { notebook } from '../../notebooks/build-sheet.js';

const rare = readParts(readFileSync(new URL('../parts/files/rare.yaml', import.meta.url), 'utf8'));

function numbersOf(build: string) {
  const { build: part, motionRatio, ...values } = readParameterValues(notebook.parameters, { build }, rare);
  return sheetNumbers(part, { ...values, motionRatio });
}

// No file says so much friction: 50 N at most, and at 1000 m/s any oil holds back with more. Whoever asks the sentence may.
test('friction that nothing exceeds is said to be larger than damping at every speed', () => {
  const numbers = numbersOf('usual');
  const said = (frictionSpeed: number | undefined) => behaviour({ ...numbers, frictionSpeed }, 8e-3);
  expect(said(undefined)).toContain('Seal friction is larger than damping at every speed.');
  expect(said(0.004)).toContain('Below 4 mm/s seal friction is larger than damping.');
});

test('seals without friction rule below no speed, and nothing is said of it', () => {
  expect(behaviour(numbersOf('squeezed gas'), 8e-3).join(' ')).not.toContain('larger than damping');
});
