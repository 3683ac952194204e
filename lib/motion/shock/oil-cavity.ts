/**
 * When a cavity opened and closed again in a run.
 *
 * @public
 */
export interface CavityInterval {
  /** When the cavity opened [s]. */
  readonly opened: number;
  /** When it closed [s]; not given where it was still open at the end. */
  readonly closed?: number;
}

/** Whether there is a cavity now, and the history of it. The flag is the mode of the equations: it changes at an event only. */
export interface OilCavity {
  isOpen: boolean;
  readonly cavities: CavityInterval[];
}

export function turnCavity(oil: OilCavity, time: number): void {
  oil.isOpen = !oil.isOpen;
  const last = oil.cavities.at(-1);
  if (oil.isOpen) oil.cavities.push({ opened: time });
  else if (last !== undefined) oil.cavities[oil.cavities.length - 1] = { ...last, closed: time };
}

/** Time with a cavity between two times [s]. */
export function timeWithCavity(cavities: readonly CavityInterval[], from: number, to: number): number {
  let sum = 0;
  for (const { opened, closed } of cavities) {
    sum += Math.max(0, Math.min(closed ?? to, to) - Math.max(opened, from));
  }
  return sum;
}
