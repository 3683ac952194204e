import { describe, expect, it } from 'vitest';
import { prose } from '../../lib/page/blocks/prose.js';

describe('a sentence', () => {
  it('keeps numbers with their units', () => {
    expect(prose('At 8 °C and 300 mm/s, 17 % or 2.5 N.')).toBe(
      'At 8\u00a0°C and 300\u00a0mm/s, 17\u00a0% or 2.5\u00a0N.',
    );
  });

  it('keeps numbers with units that only results have', () => {
    expect(prose('takes 0.589 J, 3 W, as a damper of 59.6 N·s/m')).toBe(
      'takes 0.589\u00a0J, 3\u00a0W, as a damper of 59.6\u00a0N·s/m',
    );
  });

  it('breaks between other words', () => {
    expect(prose('the 4 Newtons of 350 silicone')).toBe('the 4 Newtons of 350 silicone');
  });
});
