import { describe, expect, it } from 'vitest';
import { registeredTransforms } from '../../lib/live/pictures/vega-transforms.js';
import { chartSpecs } from '../../lib/plot/vega/chart-specs.js';
import { runtimeSpecs } from '../../lib/plot/vega/runtime-specs.js';
import { sampleFigures } from '../plot/sample-figures.js';

/** Types of all operators in a compiled specification, wherever they stand in it. */
function operatorTypes(part: unknown): readonly string[] {
  if (typeof part !== 'object' || part === null) return [];
  const inside = Object.values(part).flatMap(operatorTypes);
  const operators = 'operators' in part && Array.isArray(part.operators) ? part.operators : [];
  return [...inside, ...operators.map(({ type }: { readonly type: string }) => type)];
}

describe('the parts of Vega in a page', () => {
  it('are the transforms that the compiled charts use, and no others', () => {
    const used = new Set(operatorTypes(runtimeSpecs()));
    // An operator of that name is part of every dataflow.
    used.delete('operator');
    expect([...registeredTransforms].sort()).toEqual([...used].sort());
  });

  it('draw every kind of chart there is', () => {
    const drawn = new Set(sampleFigures.map(({ chart }) => chart.kind));
    expect(Object.keys(chartSpecs).sort()).toEqual([...drawn].sort());
  });
});
