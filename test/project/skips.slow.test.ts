import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { reporters } from '../no-skips.js';

const repository = fileURLToPath(new URL('../..', import.meta.url));

function run(ci: string) {
  const { status, stderr } = spawnSync(
    process.execPath,
    ['node_modules/vitest/vitest.mjs', 'run', '--config', 'test/project/skips/vitest.config.ts'],
    { cwd: repository, encoding: 'utf8', env: { ...process.env, CI: ci } },
  );
  return { status, stderr };
}

test('a skipped test is no fault on the machine of a contributor', () => {
  expect(run('false').status).toBe(0);
});

test('a skipped test fails the run under CI, by name', () => {
  const { status, stderr } = run('true');
  expect(status).toBe(1);
  expect(stderr).toContain('skipped.fixture.ts: is left out');
  expect(stderr).not.toContain('runs');
});

test('the tests of the project are run under that rule', async () => {
  const { default: config } = await import('../vitest.config.js');
  expect(config.test?.reporters).toBe(reporters);
});
