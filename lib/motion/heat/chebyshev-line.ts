const parts = 8;

/**
 * A polynomial of degree 8 through a smooth function at Chebyshev's points.
 *
 * @see Berrut & Trefethen, SIAM Rev. 46 (2004) 501, Eq. (5.4): the barycentric form
 */
export function chebyshevLine(f: (x: number) => number, low: number, high: number): (x: number) => number {
  const places = Array.from(
    { length: parts + 1 },
    (_, i) => (low + high) / 2 - ((high - low) / 2) * Math.cos((Math.PI * i) / parts),
  );
  const values = places.map(f);
  return (x) => {
    let above = 0;
    let below = 0;
    for (let i = 0; i <= parts; i++) {
      const distance = x - (places[i] as number);
      if (distance === 0) return values[i] as number;
      const weight = ((i % 2 === 0 ? 1 : -1) * (i === 0 || i === parts ? 0.5 : 1)) / distance;
      above += weight * (values[i] as number);
      below += weight;
    }
    return above / below;
  };
}
