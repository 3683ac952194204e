/**
 * Primitive polynomial (all its bits) and initial direction numbers of each dimension after the first.
 *
 * Joe & Kuo, SIAM J. Sci. Comput. 30 (2008) 2635, set "new-joe-kuo-6", rows 2 to 41; Copyright (c) 2008, Frances Y. Kuo and
 * Stephen Joe, BSD licence.
 */
export const directionNumbers: readonly {
  readonly polynomial: number;
  readonly initial: readonly number[];
}[] = [
  { polynomial: 3, initial: [1] },
  { polynomial: 7, initial: [1, 3] },
  { polynomial: 11, initial: [1, 3, 1] },
  { polynomial: 13, initial: [1, 1, 1] },
  { polynomial: 19, initial: [1, 1, 3, 3] },
  { polynomial: 25, initial: [1, 3, 5, 13] },
  { polynomial: 37, initial: [1, 1, 5, 5, 17] },
  { polynomial: 41, initial: [1, 1, 5, 5, 5] },
  { polynomial: 47, initial: [1, 1, 7, 11, 19] },
  { polynomial: 55, initial: [1, 1, 5, 1, 1] },
  { polynomial: 59, initial: [1, 1, 1, 3, 11] },
  { polynomial: 61, initial: [1, 3, 5, 5, 31] },
  { polynomial: 67, initial: [1, 3, 3, 9, 7, 49] },
  { polynomial: 91, initial: [1, 1, 1, 15, 21, 21] },
  { polynomial: 97, initial: [1, 3, 1, 13, 27, 49] },
  { polynomial: 103, initial: [1, 1, 1, 15, 7, 5] },
  { polynomial: 109, initial: [1, 3, 1, 15, 13, 25] },
  { polynomial: 115, initial: [1, 1, 5, 5, 19, 61] },
  { polynomial: 131, initial: [1, 3, 7, 11, 23, 15, 103] },
  { polynomial: 137, initial: [1, 3, 7, 13, 13, 15, 69] },
  { polynomial: 143, initial: [1, 1, 3, 13, 7, 35, 63] },
  { polynomial: 145, initial: [1, 3, 5, 9, 1, 25, 53] },
  { polynomial: 157, initial: [1, 3, 1, 13, 9, 35, 107] },
  { polynomial: 167, initial: [1, 3, 1, 5, 27, 61, 31] },
  { polynomial: 171, initial: [1, 1, 5, 11, 19, 41, 61] },
  { polynomial: 185, initial: [1, 3, 5, 3, 3, 13, 69] },
  { polynomial: 191, initial: [1, 1, 7, 13, 1, 19, 1] },
  { polynomial: 193, initial: [1, 3, 7, 5, 13, 19, 59] },
  { polynomial: 203, initial: [1, 1, 3, 9, 25, 29, 41] },
  { polynomial: 211, initial: [1, 3, 5, 13, 23, 1, 55] },
  { polynomial: 213, initial: [1, 3, 7, 3, 13, 59, 17] },
  { polynomial: 229, initial: [1, 3, 1, 3, 5, 53, 69] },
  { polynomial: 239, initial: [1, 1, 5, 5, 23, 33, 13] },
  { polynomial: 241, initial: [1, 1, 7, 7, 1, 61, 123] },
  { polynomial: 247, initial: [1, 1, 7, 9, 13, 61, 49] },
  { polynomial: 253, initial: [1, 3, 3, 5, 3, 55, 33] },
  { polynomial: 285, initial: [1, 3, 1, 15, 31, 13, 49, 245] },
  { polynomial: 299, initial: [1, 3, 5, 15, 31, 59, 63, 97] },
  { polynomial: 301, initial: [1, 3, 1, 11, 11, 11, 77, 249] },
  { polynomial: 333, initial: [1, 3, 1, 11, 27, 43, 71, 9] },
];
