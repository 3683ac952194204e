import { describe, expect, it } from 'vitest';
import { pageJson, pageTables, readParameterValues, tableCsv } from '../../lib/page/index.js';
import { contentOf, hostileName, notebook, parts } from './sample-page.js';

const page = notebook.run(parts, readParameterValues(notebook.parameters, {}, parts));

describe('a table as CSV', () => {
  it('follows RFC 4180: CRLF, quotes about commas and quotes', () => {
    const columns = [
      { label: 'Oil', unit: '' },
      { label: 'Speed', unit: 'mm/s', dimension: 'speed' },
    ] as const;
    expect(
      tableCsv({
        columns,
        rows: [
          ['a, "b"', 0.1],
          ['c', null],
        ],
      }),
    ).toBe('Oil,"Speed, mm/s"\r\n"a, ""b""",100\r\nc,\r\n');
  });

  it('does not let a name run as a formula of a spreadsheet', () => {
    const rows = [['=1+1'], ['@a'], ['-2'], [-2]];
    expect(tableCsv({ columns: [{ label: '+x', unit: '' }], rows })).toBe(
      "'+x\r\n'=1+1\r\n'@a\r\n'-2\r\n-2\r\n",
    );
  });
});

describe('a page as data', () => {
  it('has the table of each figure and each table by its id', () => {
    expect([...pageTables(page).keys()]).toEqual(['force', 'names']);
  });

  it('is JSON with numbers in the units of their headings', () => {
    const data = JSON.parse(pageJson(contentOf(page)));
    expect(data).toMatchObject({ title: 'A sample', version: '1.2.3', contentHash: '0123456789abcdef' });
    const figure = data.blocks.find((block: { kind: string }) => block.kind === 'figure');
    expect(figure.table.columns[0]).toEqual({ label: 'Shaft speed', unit: 'mm/s' });
    expect(figure.table.rows.at(-1)).toEqual([1000, 10, 20, 30, 40]);
    expect(figure.drawings).toBeUndefined();
    expect(data.parameters[0].text).toBe(hostileName);
  });
});
