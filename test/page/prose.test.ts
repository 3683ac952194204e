import { describe, expect, it } from 'vitest';
import { htmlText } from '../../lib/page/html/html-text.js';
import { prose } from '../../lib/page/html/prose.js';

const said = (text: string): string => htmlText(prose(text));
const whole = (unit: string): string => `<span class="unit">${unit}</span>`;

describe('a sentence', () => {
  it('keeps numbers with their units', () => {
    expect(said('At 8 °C and 1.2 ml, 17 % or 2.5 N.')).toBe(
      'At 8\u00a0°C and 1.2\u00a0ml, 17\u00a0% or 2.5\u00a0N.',
    );
  });

  it('keeps numbers with units that only results have', () => {
    expect(said('takes 0.589 J, 3 W')).toBe('takes 0.589\u00a0J, 3\u00a0W');
  });

  it('keeps a unit whole that a browser may break after its slash', () => {
    expect(said('at 300 mm/s, as a damper of 59.6 N·s/m')).toBe(
      `at 300\u00a0${whole('mm/s')}, as a damper of 59.6\u00a0${whole('N·s/m')}`,
    );
    expect(said('in N/mm of spring')).toBe(`in ${whole('N/mm')} of spring`);
  });

  it('adds no letter to a unit, so that a copy of it is that unit', () => {
    expect(said('300 mm/s').replaceAll(/<[^>]*>/gu, '')).toBe('300\u00a0mm/s');
  });

  it('breaks between other words', () => {
    expect(said('the 4 Newtons of 350 silicone, front/side')).toBe(
      'the 4 Newtons of 350 silicone, front/side',
    );
    expect(said('')).toBe('');
  });
});
