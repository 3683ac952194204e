import { test } from 'vitest';
import { requireSolvedPistons } from './solved-pistons.js';

test('five hundred pistons of any holes, shapes, valves and oils are solved at any speed, both ways', () => {
  requireSolvedPistons(500);
});
