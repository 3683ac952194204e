import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { pagePassed, readParameterValues } from '../../lib/page/index.js';
import { readParts } from '../../lib/parts/index.js';
import { notebook as holeSize } from '../../notebooks/hole-size.js';
import { notebook as limits } from '../../notebooks/limits.js';

const parts = readParts(readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8'));
const small = parts.pistons.filter(({ piston }) => piston.diameter < 0.012).map(({ name }) => name);
const oils = parts.oils.map(({ name }) => name);

describe('hole-size', () => {
  const page = (texts: Readonly<Record<string, string>>) =>
    holeSize.run(parts, readParameterValues(holeSize.parameters, texts, parts));

  it.each(small.flatMap((piston) => oils.map((oil) => ({ piston, oil }))))(
    'passes its own checks with $piston and $oil',
    (texts) => {
      const made = page({ ...texts, shock: 'short 12' });
      expect(pagePassed(made), JSON.stringify(made.blocks.filter(({ kind }) => kind === 'check'))).toBe(true);
      expect(JSON.stringify(made)).not.toMatch(/NaN|Infinity|undefined/u);
    },
  );

  it('says what the drill takes away', () => {
    const answer = page({ piston: 'two 1.7', shock: 'short 12', drill: '0.1 mm' }).answer;
    expect(answer).toMatch(
      /^Drilled 0.1 mm larger, the holes of two 1.7 lose \d+ % of the damping at 50 mm\/s/u,
    );
  });
});

describe('limits', () => {
  const page = (texts: Readonly<Record<string, string>>) =>
    limits.run(parts, readParameterValues(limits.parameters, texts, parts));

  it.each(oils.flatMap((oil) => ['0.8 bar', '3 bar'].map((pressure) => ({ oil, pressure }))))(
    'passes its own checks with $oil at $pressure',
    (texts) => {
      const made = page({ ...texts, piston: 'two 1.7', shock: 'short 12' });
      expect(pagePassed(made), JSON.stringify(made.blocks.filter(({ kind }) => kind === 'check'))).toBe(true);
      expect(JSON.stringify(made)).not.toMatch(/NaN|Infinity|undefined/u);
    },
  );

  it('names the cap', () => {
    expect(page({ piston: 'two 1.7', shock: 'short 12' }).answer).toMatch(
      /^With gas at 1.01 bar the pressure on the piston makes 10\.\d N at most in compression, whatever the oil/u,
    );
  });
});
