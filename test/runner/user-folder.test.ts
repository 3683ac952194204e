import { expect, test } from 'vitest';
import { userFolder } from '../../lib/runner/command/user-folder.js';

test('the folder of the user is where npm was started, and where the command was without it', () => {
  expect(userFolder({ npm_lifecycle_event: 'start', INIT_CWD: '/home/user' }, '/package')).toBe('/home/user');
  expect(userFolder({ npm_lifecycle_event: 'start' }, '/package')).toBe('/package');
  // Another script of npm, which started this command in a folder of its own.
  expect(userFolder({ npm_lifecycle_event: 'test', INIT_CWD: '/home/user' }, '/package')).toBe('/package');
  expect(userFolder({}, '/package')).toBe('/package');
});
