import fc from 'fast-check';

/** Any sign of Unicode but halves of pairs; the list of them that fast-check has takes it seconds to make. */
export const anySign = fc
  .oneof(
    fc.integer({ min: 0x20, max: 0x7e }),
    fc.integer({ min: 0, max: 0xd7ff }),
    fc.integer({ min: 0xe000, max: 0x10ffff }),
  )
  .map((code) => String.fromCodePoint(code));
