/**
 * Friction that sticks: bristles that bend before they slide (LuGre). Other than the smooth law of the seals it holds a shaft at rest.
 *
 * @public
 */
export interface BristleFriction {
  /** Friction while sliding and at breakaway [N], above 0; the second at least the first. */
  readonly kineticForce: number;
  readonly breakawayForce: number;
  /** Speed over which breakaway falls to sliding friction [m/s], above 0. */
  readonly stribeckSpeed: number;
  /** Stiffness of the bristles [N/m], above 0: sliding friction over the travel before sliding, 10 to 50 µm for a rubber ring. */
  readonly stiffness: number;
  /** Their damping [N·s/m], 0 or more. */
  readonly damping: number;
  /** Friction that grows with the speed [N·s/m], 0 or more. */
  readonly viscous: number;
}

/** Friction at which the bristles slide at a speed [N]. */
function sliding({ kineticForce, breakawayForce, stribeckSpeed }: BristleFriction, speed: number): number {
  return kineticForce + (breakawayForce - kineticForce) * Math.exp(-((speed / stribeckSpeed) ** 2));
}

/**
 * Rate at which the bristles bend [m/s], `v − σ₀ |v| z / g(v)`.
 *
 * @param friction - forces, stiffness and speed above 0
 * @param bend - of the bristles [m]
 * @param speed - of sliding [m/s]
 * @see Canudas de Wit, Olsson, Åström & Lischinsky, IEEE Trans. Autom. Control 40 (1995) 419 (form from memory)
 * @public
 */
export function bristleRate(friction: BristleFriction, bend: number, speed: number): number {
  return speed - (friction.stiffness * Math.abs(speed) * bend) / sliding(friction, speed);
}

/**
 * Friction of bent bristles [N], `σ₀ z + σ₁ z' + σ₂ v`.
 *
 * @param friction - forces, stiffness and speed above 0
 * @param bend - of the bristles [m]
 * @param speed - of sliding [m/s]
 * @public
 */
export function bristleForce(friction: BristleFriction, bend: number, speed: number): number {
  const { stiffness, damping, viscous } = friction;
  return stiffness * bend + damping * bristleRate(friction, bend, speed) + viscous * speed;
}
