import { InputError } from '../../base/input-error.js';
import { listOf, requireShape } from '../../base/shape.js';

/**
 * How well one person repeats a measurement, and how far persons differ.
 *
 * @public
 */
export interface Repeatability {
  /** Standard deviation within a person's repeats. */
  readonly repeatability: number;
  /** Standard deviation between persons; 0 where the repeats alone explain it. */
  readonly betweenPersons: number;
  /** Both together. */
  readonly reproducibility: number;
  /** Mean square between and within groups, and their ratio. */
  readonly meanSquareBetween: number;
  readonly meanSquareWithin: number;
  readonly ratio: number;
}

/**
 * Scatter within and between persons that timed the same thing equally often.
 *
 * @param groups - one list of repeats a person, 2 or more persons, 2 or more repeats, as many for each
 * @throws InputError for groups of other sizes
 * @see ISO 5725-2:1994, 7.4 (from memory); one-way analysis of variance
 * @public
 */
export function repeatabilityOf(groups: readonly (readonly number[])[]): Repeatability {
  requireShape({ groups }, { groups: listOf(listOf('')) });
  const repeats = groups[0]?.length ?? 0;
  if (groups.length < 2 || repeats < 2 || groups.some(({ length }) => length !== repeats)) {
    throw new InputError({
      field: 'groups',
      value: groups.map(({ length }) => length).join(', '),
      accepted: '2 or more groups of 2 or more values, as many in each',
    });
  }
  const means = groups.map((group) => group.reduce((sum, value) => sum + value, 0) / repeats);
  const mean = means.reduce((sum, value) => sum + value, 0) / groups.length;
  const meanSquareBetween =
    (repeats * means.reduce((sum, value) => sum + (value - mean) ** 2, 0)) / (groups.length - 1);
  const within = groups.reduce(
    (sum, group, index) => sum + group.reduce((part, value) => part + (value - means[index]!) ** 2, 0),
    0,
  );
  const meanSquareWithin = within / (groups.length * (repeats - 1));
  const between = Math.max(0, (meanSquareBetween - meanSquareWithin) / repeats);
  return {
    repeatability: Math.sqrt(meanSquareWithin),
    betweenPersons: Math.sqrt(between),
    reproducibility: Math.sqrt(meanSquareWithin + between),
    meanSquareBetween,
    meanSquareWithin,
    ratio: meanSquareBetween / meanSquareWithin,
  };
}
