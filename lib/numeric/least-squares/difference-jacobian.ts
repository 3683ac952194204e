/** Residuals of a model at a set of parameters. */
export type Residuals = (parameters: readonly number[]) => ArrayLike<number>;

/** Step of a central difference over the size of a parameter: the cube root of the rounding error balances both errors. */
const relativeStep = Number.EPSILON ** (1 / 3);

/**
 * Slopes of all residuals against one parameter after another, by central differences; by one-sided ones where the model ends on one side.
 *
 * @param residuals - function of the parameters
 * @param parameters - where
 * @param sizes - size of each parameter's usual change, 0 where its value says it
 * @param atCentre - residuals there
 * @returns one column a parameter; a column holds values that are not finite where the model has none on either side
 * @see step: Press et al., Numerical Recipes, sec. 5.7
 */
export function differenceJacobian(
  residuals: Residuals,
  parameters: readonly number[],
  sizes: readonly number[],
  atCentre: ArrayLike<number>,
): readonly Float64Array[] {
  const moved = [...parameters];
  return parameters.map((value, index) => {
    const step = relativeStep * (Math.max(Math.abs(value), sizes[index]!) || 1);
    const [above, below] = [value + step, value - step];
    moved[index] = above;
    const right = residuals(moved);
    moved[index] = below;
    const left = residuals(moved);
    moved[index] = value;
    const column = new Float64Array(atCentre.length);
    for (let row = 0; row < column.length; row++) {
      const [a, b, c] = [left[row]!, atCentre[row]!, right[row]!];
      const both = (c - a) / (above - below);
      if (Number.isFinite(both)) column[row] = both;
      else column[row] = Number.isFinite(c) ? (c - b) / (above - value) : (b - a) / (value - below);
    }
    return column;
  });
}
