import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';

const folder = fileURLToPath(new URL('..', import.meta.url));

/** What needs a browser, a solver, a package manager or threads. */
const slow =
  /playwright-core|live\/chromium\.js|\.\/chromium\.js|solve-hole\.js|startDecisionWorkers|runCommand|'npm'/u;

const own = 'project/suite.test.ts';

/** A time limit of a file, a test or a hook; the one in `vitest.config.ts` is for the busiest machine. */
const limit = /setConfig|(?:test|hook)Timeout|', \{ timeout: |\}, \d[\d_]{3,}\);/u;

const tests = readdirSync(folder, { recursive: true, encoding: 'utf8' }).filter(
  (name) => /\.test\.ts$/u.test(name) && name !== own,
);

const quickTests = tests.filter((name) => !/\.(?:slow|browser|thorough)\.test\.ts$/u.test(name));

test('the quick tests are most of the tests', () => expect(quickTests.length).toBeGreaterThan(70));

test.each(quickTests)('%s starts nothing slow', (name) => {
  expect(readFileSync(`${folder}/${name}`, 'utf8')).not.toMatch(slow);
});

test('no test has a time limit of its own, which a busy machine would not keep', () => {
  expect(tests.filter((name) => limit.test(readFileSync(`${folder}/${name}`, 'utf8')))).toEqual([]);
});
