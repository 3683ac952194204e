/**
 * Places and weights of an integral over 0 to 1.
 *
 * @public
 */
export interface Quadrature {
  readonly places: readonly number[];
  readonly weights: readonly number[];
}

/**
 * Rule of Gauss and Legendre, by Newton's method on the Legendre polynomial.
 *
 * @param count - places, 1 or more
 * @see Press et al., Numerical Recipes, sec. 4.6
 */
export function gaussLegendre(count: number): Quadrature {
  const nodes = Array.from({ length: count }, (_, index) => {
    let x = Math.cos((Math.PI * (index + 0.75)) / (count + 0.5));
    let slope = 1;
    for (let iteration = 0; iteration < 20; iteration++) {
      let [previous, value] = [1, x];
      for (let degree = 2; degree <= count; degree++) {
        [previous, value] = [value, ((2 * degree - 1) * x * value - (degree - 1) * previous) / degree];
      }
      slope = (count * (x * value - previous)) / (x * x - 1);
      x -= value / slope;
    }
    return { place: (1 - x) / 2, weight: 1 / ((1 - x * x) * slope * slope) };
  });
  return { places: nodes.map(({ place }) => place), weights: nodes.map(({ weight }) => weight) };
}
