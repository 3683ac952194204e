import { standardGravity } from '../../lib/base/constants.js';
import { InputError } from '../../lib/base/input-error.js';
import { closeShock } from '../../lib/fill/chamber/closed-shock.js';
import { closingPositionForForce, quietClosing } from '../../lib/fill/chamber/closing-position.js';
import { staticForce } from '../../lib/fill/chamber/static-force.js';
import type { Block } from '../../lib/page/index.js';
import { grams, millimetres } from '../base/bench-wording.js';
import { sealWords } from '../base/seal-words.js';
import { type BuiltShock, workingStroke } from '../build-sheet/built-shock.js';

/** Pushes at full compression that a builder may want [kg]; examples. */
const examples = [0, 0.01, 0.02, 0.04] as const;

/** Where to close this build for a wanted push, and for none. */
export function whatToChangeTable(built: BuiltShock): Block {
  const { chamber, compensator } = built.shock;
  const { stroke } = chamber;
  const working = { from: workingStroke.from * stroke, to: workingStroke.to * stroke };
  const quiet = quietClosing(chamber, compensator, built.closing, working);
  const text = (label: string) => ({ label, unit: '' });
  return {
    kind: 'table',
    id: 'what-to-change',
    title: 'Where to close this build for what you want',
    table: {
      columns: [text('Wanted'), text('Close with the shaft'), text('Then')],
      rows: [
        [
          `as dead as can be from ${millimetres(working.from)} to ${millimetres(working.to)} in`,
          `${millimetres(quiet.position)} in`,
          `never over ${grams(quiet.largestForce)} either way; the seals hold ${sealWords(built.assembled.seal)}`,
        ],
        ...examples.map((mass) => [
          mass === 0 ? 'no push with the shaft fully in' : `${1e3 * mass} g with the shaft fully in`,
          ...closingFor(built, mass * standardGravity),
        ]),
      ],
    },
    note: 'What makes room stays as large as it is. Twice the gas about halves every push; a shock that cannot push as hard as you want has too much of it.',
  };
}

function closingFor(built: BuiltShock, force: number): readonly [string, string] {
  const { chamber, compensator } = built.shock;
  const wanted = { force, position: chamber.stroke };
  try {
    const position = closingPositionForForce(chamber, compensator, built.closing, wanted);
    const out = staticForce(closeShock(chamber, compensator, { ...built.closing, position }), 0);
    return [
      `${millimetres(position)} in`,
      out < 0 ? `sucked in with ${grams(-out)} fully out` : `no suction fully out`,
    ];
  } catch (error) {
    if (error instanceof InputError && error.field === 'wanted.force')
      return ['nowhere', 'out of reach: take a smaller compensator'];
    throw error;
  }
}
