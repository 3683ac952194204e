import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { expect, test } from 'vitest';
import { licenceText, packageFolders, sharedNotices } from '../../lib/runner/build/licences.js';

test('packages are told by the folder that their files lie in, with a scope where there is one, without this library', () => {
  const folders = packageFolders([
    '/a/node_modules/yaml/dist/parse.js',
    '/a/node_modules/yaml/index.js',
    '/a/node_modules/@scope/part/index.js',
    '/a/node_modules/one/node_modules/two/index.js',
    '/a/node_modules/dashpot/index.js',
    '/a/lib/index.js',
  ]);
  expect([...folders]).toEqual([
    ['yaml', '/a/node_modules/yaml'],
    ['@scope/part', '/a/node_modules/@scope/part'],
    ['two', '/a/node_modules/one/node_modules/two'],
  ]);
});

test('packages under one text share a notice', () => {
  expect(
    sharedNotices([
      ['one', 'free'],
      ['two', 'freer'],
      ['three', 'free'],
    ]),
  ).toEqual([
    { name: 'one, three', text: 'free' },
    { name: 'two', text: 'freer' },
  ]);
});

test('a licence is read in either spelling, and a package without one is no package to ship', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'licence-'));
  try {
    expect(() => licenceText('bare', folder)).toThrow('the package bare has no licence file');
    writeFileSync(path.join(folder, 'licensed.txt'), 'not this');
    writeFileSync(path.join(folder, 'LICENCE.md'), ' Use it.\n');
    expect(licenceText('own', folder)).toBe('Use it.');
  } finally {
    rmSync(folder, { recursive: true });
  }
});
