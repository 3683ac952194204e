import { linearLeastSquares } from './linear-least-squares.js';

/** Weights that turn the samples of a window into value and slope at its middle. */
export interface LocalPolynomial {
  readonly value: readonly number[];
  /** Per sample step. */
  readonly slope: readonly number[];
}

/**
 * Weights of a polynomial fitted to an odd number of evenly spaced samples.
 *
 * @param halfWidth - samples on each side of the middle, 1 or more
 * @param degree - 1 to twice the half width, less 1
 * @see Savitzky & Golay, Anal. Chem. 36 (1964) 1627
 */
export function localPolynomial(halfWidth: number, degree: number): LocalPolynomial {
  const places = Array.from({ length: 2 * halfWidth + 1 }, (_, index) => index - halfWidth);
  const rows = places.map((place) =>
    Array.from({ length: degree + 1 }, (_, power) => (place / halfWidth) ** power),
  );
  const responses = places.map(
    (_, index) =>
      linearLeastSquares(
        rows,
        places.map((__, other) => (other === index ? 1 : 0)),
      ).coefficients,
  );
  return {
    value: responses.map((coefficients) => coefficients[0]!),
    slope: responses.map((coefficients) => coefficients[1]! / halfWidth),
  };
}
