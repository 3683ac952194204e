/**
 * A thin disc, or a stack of equal ones, clamped at the shaft and lying on one face of the piston over some of its holes.
 * Oil from the other face lifts it; oil towards it shuts it.
 *
 * @public
 */
export interface DiscValve {
  /** Face of the piston it lies on: `shaft-side` opens in compression, `blind-side` in rebound. */
  readonly face: 'shaft-side' | 'blind-side';
  /** Indices of the hole groups it covers; all on one pitch circle. */
  readonly covers: readonly number[];
  /** Outer diameter [m], up to the bore, and past the far edge of the holes. */
  readonly outerDiameter: number;
  /** Diameter up to which it is clamped [m], short of the near edge of the holes. */
  readonly clampDiameter: number;
  /** Thickness of one disc [m], 1e-6 to 0.01. */
  readonly thickness: number;
  /** How many equal discs lie on each other, 1 to 100; they slide, so their stiffnesses add. */
  readonly count: number;
  /** Young's modulus [Pa], 1e6 to 1e13; spring steel about 2.0e11. */
  readonly elasticModulus: number;
  /** Poisson's ratio, 0 to 0.49; metals about 0.3. */
  readonly poissonRatio: number;
  /** How far the seat bends the disc at the holes before it lifts [m], 0 to 0.001 and to its thickness. */
  readonly preload: number;
  /** Lift at which a stop holds the disc [m], 1e-6 to 0.1; without it nothing does. */
  readonly largestLift?: number;
}
