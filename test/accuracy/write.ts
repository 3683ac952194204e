// Writes the tables of docs/accuracy.md, docs/hole-law.md and docs/one-way-valve.md from the rows of the tests: npm run accuracy
import { readFileSync, writeFileSync } from 'node:fs';
import { withTable, writtenPages } from './accuracy-page.js';

for (const { path, table } of writtenPages) {
  writeFileSync(path, withTable(readFileSync(path, 'utf8'), table()));
}
