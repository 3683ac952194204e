/**
 * When oil tore and closed again in a run.
 *
 * @public
 */
export interface Tear {
  /** When the cavity opened [s]. */
  readonly opened: number;
  /** When it closed [s]; not given where it was still open at the end. */
  readonly closed?: number;
}

/** Whether the oil is torn now, and the history of it. The flag is the mode of the equations: it changes at an event only. */
export interface TornOil {
  torn: boolean;
  readonly tears: Tear[];
}

export function turnTorn(oil: TornOil, time: number): void {
  oil.torn = !oil.torn;
  const last = oil.tears.at(-1);
  if (oil.torn) oil.tears.push({ opened: time });
  else if (last !== undefined) oil.tears[oil.tears.length - 1] = { ...last, closed: time };
}

/** Time with a cavity between two times [s]. */
export function timeTorn(tears: readonly Tear[], from: number, to: number): number {
  let sum = 0;
  for (const { opened, closed } of tears) {
    sum += Math.max(0, Math.min(closed ?? to, to) - Math.max(opened, from));
  }
  return sum;
}
