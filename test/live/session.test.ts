import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { openBench, takeFile } from '../../lib/live/case/bench.js';
import { arrive, caseWanted, openSession } from '../../lib/live/case/session.js';
import { partsFile } from '../../lib/parts/parts-file.js';
import { notebook as landing } from '../../notebooks/landing.js';

const demoPartsText = readFileSync(new URL('../../notebooks/demo-parts.yaml', import.meta.url), 'utf8');

/** What a calliper and a label say: no spring, so no landing. */
const smallest = `dashpot: 1
oils: [{ name: oil, base: silicone, viscosity: 350 cSt }]
pistons: [{ name: piston, diameter: 11.9 mm, thickness: 2.5 mm, holes: [{ count: 2, diameter: 1.5 mm }] }]
shocks: [{ name: shock, bore: 12 mm, shaft: 3 mm, stroke: 25 mm }]
builds: [{ name: front, shock: shock, piston: piston, oil: oil }]
`;

describe('a page whose reader has chosen settings and then opens other parts', () => {
  const bench = openBench({ partsName: 'demo.yaml', partsText: demoPartsText, given: {} }, [
    landing.parameters,
  ]);
  const session = openSession(landing, bench);
  bench.choices = { temperature: '12 °C' };

  it('answers for the parts that it has', () => expect(caseWanted(session).answered).toBe(true));

  it('says what to add where these say too little, and is not left with the old answer', () => {
    takeFile(bench, partsFile('mine.yaml', smallest), true);
    arrive(session);
    const { answered, file } = caseWanted(session);
    expect(answered).toBe(false);
    expect(file.name).toBe('mine.yaml');
  });
});
