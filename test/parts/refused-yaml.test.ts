import { describe, expect, it } from 'vitest';
import { type Row, refusal } from './refusal.js';
import { changed, smallFile } from './small-file.js';

describe('YAML that is broken, or more than a parts file needs', () => {
  it.each<Row>([
    ['tab', '    bore: 12 mm', '\tbore: 12 mm', '22:1 a tab is used to indent this line; use spaces'],
    [
      'no space after a colon',
      'base: silicone',
      'base:silicone',
      '5:5 a key needs a colon and a space after it, on the same line, as in "name: clear 350"',
    ],
    [
      'colon in a text',
      'a file for tests',
      'a file: for tests',
      '2:8 a colon and a space begin a value; put a text that holds them in quotes, and begin keys at the column of their neighbours',
    ],
    [
      'sign that YAML keeps for itself',
      'a file for tests',
      '@home',
      '2:8 a text that starts with this sign must be in quotes',
    ],
    ['quote never closed', 'soft\n', '"soft\n', '35:1 a quote is opened and never closed'],
    [
      'bracket never closed',
      'mm }\nshocks',
      'mm\nshocks',
      '20:1 a bracket is opened and not closed, or what is in it is not indented',
    ],
    [
      'uneven indentation',
      '  - name: two 1.7\n    diameter',
      '  - name: two 1.7\n   diameter',
      '16:1 this line is neither an entry of the list above nor indented as part of one',
    ],
    [
      'two documents',
      'shocks:',
      '---\nshocks:',
      '20:1 a second document begins here; a parts file is one, without "---" in it',
    ],
    [
      'alias',
      'about: a file for tests',
      'about: &x a\nspare: *x',
      '2:8 anchors (&) are not accepted; write the value out where it is needed\n3:8 aliases (*) are not accepted; write the value out',
    ],
    [
      'tag',
      'about: a',
      'about: !!str a',
      '2:8 tags (!) are not accepted; put a text that starts with "!" in quotes',
    ],
    [
      'YAML 1.1',
      'dashpot: 1',
      '%YAML 1.1\n---\ndashpot: 1',
      '1:1 directives (%) are not accepted; leave the line out',
    ],
    [
      'merge key',
      'about: a file for tests',
      '<<: { about: x }',
      '2:1 ["<<"]: unknown key; accepted are "dashpot", "about", "oils", "pistons", "shocks", "springs", "builds", "shop", "day", "timed", "measurements", "tolerances", "recorded-stroke", "recorded-ground"',
    ],
    [
      'endless nesting',
      'a file for tests',
      '['.repeat(100_000),
      '2:31 lists and groups are nested too deeply for a parts file',
    ],
    [
      'list for a group',
      smallFile,
      '- dashpot: 1\n',
      '1:1 must be keys and values (dashpot, about, oils, …), got a list',
    ],
    [
      'text for a group',
      smallFile,
      'hello',
      '1:1 must be keys and values (dashpot, about, oils, …), got "hello"',
    ],
    [
      'group for a list',
      smallFile,
      'dashpot: 1\noils: { name: x }\n',
      '2:7 oils: must be a list, each entry on a line that starts with "- ", got a group of keys',
    ],
    ['nothing', smallFile, '', '1:1 the file is empty; it must begin with "dashpot: 1"'],
    ['only a comment', smallFile, '# dashpot: 1\n', '1:1 the file is empty; it must begin with "dashpot: 1"'],
    [
      '1001 oils',
      smallFile,
      `dashpot: 1\noils:\n${'  - {}\n'.repeat(1001)}`,
      '3:3 oils: must have at most 1000 entries, got 1001',
    ],
    [
      '100 000 oils',
      smallFile,
      `dashpot: 1\noils:\n${'  - {}\n'.repeat(100_000)}`,
      '3:3 this list or group is far too long; a list may have 1000 entries',
    ],
    [
      '100 000 commas',
      smallFile,
      `dashpot: 1\noils: [${','.repeat(100_000)}`,
      '2:7 not readable as YAML: thousands of signs or comments without a value',
    ],
    [
      'over 1 MB',
      smallFile,
      `# ${'x'.repeat(1_000_000)}`,
      '1:1 the file must have at most 1 MB, got 1.00 MB',
    ],
    [
      'over 1 MB of two-byte letters',
      smallFile,
      `# ${'é'.repeat(600_000)}`,
      '1:1 the file must have at most 1 MB, got 1.20 MB',
    ],
  ])('%s', (_what, from, to, message) => {
    expect(refusal(changed(from, to))).toBe(message);
  });

  it('aliases that explode are refused before anything is expanded', () => {
    const levels = Array.from(
      { length: 9 },
      (_, level) => `a${level + 1}: &a${level + 1} [${`*a${level},`.repeat(9)}]`,
    );
    const message = refusal(['a0: &a0 x', ...levels].join('\n'));
    expect(message.split('\n')).toHaveLength(20);
    expect(message).toMatch(/^1:5 anchors/u);
  });
});
