import { expect, onTestFinished, test } from 'vitest';
import { runInTerminal } from '../../lib/runner/command/terminal.js';

test('the command ends as it says, and a reader that closes the pipe does not end it', async () => {
  const before = process.exitCode;
  const had = process.stdout.listeners('error');
  // A listener that throws must not outlive this test, even where it fails.
  onTestFinished(() => {
    process.exitCode = before;
    for (const listener of process.stdout.listeners('error'))
      if (!had.includes(listener)) process.stdout.removeListener('error', listener as never);
  });
  await runInTerminal(async ({ workingFolder }) => {
    expect(workingFolder).toBe(process.cwd());
    const emit = (code: string) => process.stdout.emit('error', Object.assign(new Error(code), { code }));
    expect(() => emit('EPIPE')).not.toThrow();
    expect(() => emit('EIO')).toThrow('EIO');
    return 1;
  });
  expect(process.exitCode).toBe(1);
});
