import type { Block } from '../../lib/page/index.js';

/** What a reading that differs from the sheet says, and what to do. */
export function deviationTable(): Block {
  const text = (label: string) => ({ label, unit: '' });
  return {
    kind: 'table',
    id: 'deviations',
    title: 'What a deviation means',
    table: {
      columns: [text('Reading'), text('Likely cause'), text('What to do')],
      rows: [
        [
          'Friction above the sheet',
          'dry, swollen or overtight rings; bent shaft; tipped piston',
          'seals and shaft again, before any oil',
        ],
        ['Friction far below', 'worn rings', 'expect a leak; new rings'],
        [
          'Push higher at all places',
          'closed with the shaft too far out, or too much oil',
          'bleed again at the stated place',
        ],
        ['Push lower, sucks in', 'closed with the shaft too far in, or oil lost', 'top up, bleed again'],
        [
          'Push right at first, steep at the end',
          'too little gas: small or torn compensator, or hot oil',
          'check the compensator before a hard landing does',
        ],
        [
          'Push right, but much flatter',
          'air in the oil takes the place of the compensator',
          'wait and bleed once more',
        ],
        [
          'Weight too quick',
          'thinner or warmer oil, larger holes, worn rim',
          'check temperature first, then holes',
        ],
        [
          'Too quick only in the first millimetres',
          'air on the shaft side or under the piston',
          'work slowly, wait, bleed again',
        ],
        [
          'Weight too slow',
          'thicker or colder oil, smaller or burred holes, friction',
          'lighter weight: friction or oil?',
        ],
        ['Lighter weight alone too slow', 'friction', 'seals and shaft'],
        ['Left and right differ in time only', 'holes or oil', 'same bottle, same drill'],
        ['Left and right differ in length', 'rod end or spacers', 'set the length, then the collars'],
      ],
    },
    note: 'Causes in the order in which they are quickest to rule out: common practice and the models of this library, no published source.',
  };
}
