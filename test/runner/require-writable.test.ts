import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { requireWritable } from '../../lib/runner/command/require-writable.js';

const folder = mkdtempSync(path.join(tmpdir(), 'dashpot-writable-'));
const at = (...names: readonly string[]): string => path.join(folder, ...names);
writeFileSync(at('file'), '');
mkdirSync(at('there'));
afterAll(() => rmSync(folder, { recursive: true }));

describe('a folder for the pages', () => {
  test('that can be made is not left behind, and one that was there stays', async () => {
    await requireWritable(at('new', 'in', 'new'));
    await requireWritable(at('there', 'new'));
    await requireWritable(at('there'));
    expect(readdirSync(folder).sort()).toEqual(['file', 'there']);
    expect(readdirSync(at('there'))).toEqual([]);
  });

  test('that is a file or lies under one is refused by what is in the way', async () => {
    await expect(requireWritable(at('file'))).rejects.toThrow(/file: a file is in the way$/u);
    await expect(requireWritable(at('file', 'below'))).rejects.toThrow(
      /a part of the path is not a folder$/u,
    );
  });

  test.skipIf(!existsSync('/proc/self'))('that no system makes is refused at once', async () => {
    // Asked for such a whole path, Node never returns.
    await expect(requireWritable('/proc/none/below')).rejects.toThrow(
      /^cannot write into \/proc\/none\/below: it cannot be made$/u,
    );
  });
});
