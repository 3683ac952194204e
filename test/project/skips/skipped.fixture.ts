import { expect, test } from 'vitest';

test('runs', () => expect(1).toBe(1));
test.skipIf(true)('is left out', () => expect(1).toBe(2));
