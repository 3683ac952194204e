import { describe, expect, test } from 'vitest';
import { missingLines } from '../../lib/page/missing-lines.js';
import { readParts } from '../../lib/parts/index.js';
import { smallFile } from '../parts/small-file.js';

const all = ['springs', 'shop', 'timed', 'measurements', 'builds', 'oils', 'pistons', 'shocks'] as const;

/** The small file without one of its lists, which end where the next begins. */
const without = (list: string) =>
  smallFile.replace(new RegExp(`^${list}:\\n(?:[ -].*\\n)+|^${list}: .*\\n`, 'mu'), '');
const bare = without('builds').replace(/springs:\n.*\n/u, '');

describe('lines that a parts file lacks', () => {
  const parts = readParts(smallFile);

  test('say what to do with them', async () => {
    const said = all.map((missing) => {
      const { advice, lines } = missingLines(missing, parts);
      return `${missing}: ${advice}\n${lines}`;
    });
    await expect(`${said.join('\n\n')}\n`).toMatchFileSnapshot('words/missing-lines.txt');
  });

  test.each(['shop', 'timed', 'measurements'] as const)(
    '%s are accepted at the end of the file',
    (missing) => {
      expect(readParts(`${smallFile}${missingLines(missing, parts).lines}\n`)[missing]).not.toEqual(
        undefined,
      );
    },
  );

  test('a weight is timed over the stroke of the build, but for its ends', () => {
    // 85 % and 15 % of 24 mm.
    expect(missingLines('measurements', parts).lines).toContain('from: 20 mm, to: 4 mm }');
  });

  test('a spring of a file that leaves its builds to be made comes with a build', () => {
    const made = readParts(bare);
    const { lines, advice } = missingLines('springs', made);
    expect(advice).not.toContain('Then add');
    expect(readParts(`${bare}${lines}\n`).builds[0]?.spring?.rate).toBe(600);
  });
});
