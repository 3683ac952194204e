import { describe, expect, it } from 'vitest';
import { prose } from '../../lib/page/blocks/prose.js';

describe('a sentence', () => {
  it('keeps numbers with their units', () => {
    expect(prose('At 8 °C and 300 mm/s, 17 % or 2.5 N.')).toBe(
      'At 8\u00a0°C and 300\u00a0mm/s, 17\u00a0% or 2.5\u00a0N.',
    );
  });

  it('breaks between other words', () => {
    expect(prose('the 4 Newtons of 350 silicone')).toBe('the 4 Newtons of 350 silicone');
  });
});
