/** Kinematic viscosity in mm²/s, as the equations of the standards take it, from m²/s. */
export function toSquareMillimetres(kinematicViscosity: number): number {
  return kinematicViscosity * 1e6;
}

/** Kinematic viscosity in m²/s from mm²/s. */
export function fromSquareMillimetres(value: number): number {
  return value / 1e6;
}
