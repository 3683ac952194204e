import { unsteadyRows } from '../reference/unsteady-rows.js';
import { percent } from './comparison.js';
import { largeFlowTable } from './large-flow-table.js';

const numbers = [0.1, 0.3, 1, 3, 10, 30, 100];

/** Largest errors of the three lengths at each `ω d²/ν`, in parts of the pressure swing, as Markdown. */
export function unsteadyTable(): string {
  const cells = (of: (row: ReturnType<typeof unsteadyRows>[number]) => number) =>
    numbers.map((number) =>
      percent(
        Math.max(
          ...unsteadyRows()
            .filter(({ frequencyNumber }) => frequencyNumber === number)
            .map(of),
        ),
      ),
    );
  const line = (head: string, values: readonly unknown[]) => `| ${[head, ...values].join(' | ')} |`;
  return [
    line('`ω d²/ν`', numbers),
    line(
      '---',
      numbers.map(() => '---'),
    ),
    line(
      'steady law alone',
      cells(({ steadyLaw }) => steadyLaw),
    ),
    line(
      'with the apparent mass',
      cells(({ withApparentMass }) => withApparentMass),
    ),
    '',
    'Flows with inertia, L/d 1.5, the holes 4 % of the bore, in parts of the largest force or pressure drop:',
    '',
    largeFlowTable(),
  ].join('\n');
}
