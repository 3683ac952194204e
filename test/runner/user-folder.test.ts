import { expect, test } from 'vitest';
import { runInTerminal } from '../../lib/runner/command/terminal.js';
import { userFolder } from '../../lib/runner/command/user-folder.js';
import { neededPeers } from '../../lib/runner/packed/missing-peers.js';

test('the folder of the user is where npm was started, and where the command was without it', () => {
  expect(userFolder({ npm_lifecycle_event: 'start', INIT_CWD: '/home/user' }, '/package')).toBe('/home/user');
  expect(userFolder({ npm_lifecycle_event: 'start' }, '/package')).toBe('/package');
  // Another script of npm, which started this command in a folder of its own.
  expect(userFolder({ npm_lifecycle_event: 'test', INIT_CWD: '/home/user' }, '/package')).toBe('/package');
  expect(userFolder({}, '/package')).toBe('/package');
});

test('a command needs the packages of what it does: to read a file, to draw pages, to bundle what is written in TypeScript', () => {
  const [check, table, pages, own] = [['check', 'a.yaml'], ['table'], ['landing'], ['mine.ts']].map(
    neededPeers,
  );
  expect(check).toEqual(['yaml', 'zod']);
  expect(table).toEqual(check);
  expect(pages).toEqual(expect.arrayContaining([...(check ?? []), 'vega']));
  expect(pages).not.toContain('esbuild');
  expect(own).toEqual([...(pages ?? []), 'esbuild']);
  expect(neededPeers([])).toEqual(pages);
  // A page may have the name of a word only where it is the first.
  expect(neededPeers(['landing', 'check'])).toEqual(pages);
});

test('the command ends as it says, and a reader that closes the pipe does not end it', async () => {
  const before = process.exitCode;
  const had = process.stdout.listeners('error');
  await runInTerminal(async ({ workingFolder }) => {
    expect(workingFolder).toBe(process.cwd());
    const emit = (code: string) => process.stdout.emit('error', Object.assign(new Error(code), { code }));
    expect(() => emit('EPIPE')).not.toThrow();
    expect(() => emit('EIO')).toThrow('EIO');
    return 1;
  });
  const ended = process.exitCode;
  process.exitCode = before;
  for (const listener of process.stdout.listeners('error'))
    if (!had.includes(listener)) process.stdout.removeListener('error', listener as never);
  expect(ended).toBe(1);
});
