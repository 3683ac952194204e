import { expect, test } from 'vitest';
import { embeddedFonts } from '../../lib/runner/build/fonts.js';

test('a font has the letters of any text in English, so that one that is changed later is drawn with it', async () => {
  const [plain, other] = await Promise.all([embeddedFonts(''), embeddedFonts('Quite another text: 27 %~!')]);
  expect(other).toEqual(plain);
  expect(plain.map(({ weight }) => weight)).toEqual([400, 600]);
});
