import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { actions } from '../../lib/live/case/actions.js';
import { openBench, takeFile } from '../../lib/live/case/bench.js';
import { arrive, caseWanted, openSession } from '../../lib/live/case/session.js';
import { partsFile } from '../../lib/parts/parts-file.js';
import { notebook as benchStroke } from '../../notebooks/bench-stroke.js';
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
  const bench = openBench({ partsName: 'demo.yaml', partsText: demoPartsText, texts: {} }, [
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

describe('what a page does not accept', () => {
  const bench = openBench({ partsName: 'demo.yaml', partsText: demoPartsText, texts: {} }, [
    landing.parameters,
  ]);
  const session = openSession(landing, bench);
  const { change, reset } = actions(
    session,
    () => undefined,
    () => undefined,
  );

  it('is said as long as it stands in its control, and is no choice: the one before it stays', () => {
    change('temperature', '12 °C');
    change('temperature', '120 °C');
    expect(() => caseWanted(session)).toThrow('temperature: "120 °C" is out of range');
    expect(bench.choices).toEqual({ temperature: '12 °C' });
  });

  it('does not stand in the way of another page, nor of this one when it is opened again', () => {
    const other = openSession(benchStroke, bench);
    arrive(other);
    expect([...other.without]).toEqual([]);
    expect(caseWanted(other).answered).toBe(true);
    arrive(session);
    expect(caseWanted(session).body.page.answer).toContain('at 12 °C');
  });

  it('is gone once it is set right, or all is set back', () => {
    change('temperature', '120 °C');
    change('temperature', '13 °C');
    expect(caseWanted(session).body.page.answer).toContain('at 13 °C');
    change('temperature', '120 °C');
    reset();
    expect(caseWanted(session).body.page.answer).toContain('at 20 °C');
  });
});
