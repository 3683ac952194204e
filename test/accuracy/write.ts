// Writes the table of docs/accuracy.md from the rows of the tests: npm run accuracy
import { readFileSync, writeFileSync } from 'node:fs';
import { accuracyPage, withAccuracyTable } from './accuracy-page.js';

writeFileSync(accuracyPage, withAccuracyTable(readFileSync(accuracyPage, 'utf8')));
