import { optional, type Shape } from '../../base/shape.js';
import type { Event } from '../../numeric/integrator/events.js';

/**
 * Something that pushes back once it is touched, and never pulls: a stop, a tyre.
 *
 * @public
 */
export interface Cushion {
  /** Force per way pressed in [N/m], above 0. */
  readonly stiffness: number;
  /** Force per speed of pressing in [N·s/m], 0 or more. */
  readonly damping: number;
  /** Force per third power of the way pressed in [N/m³], 0 or more; 0 by default. */
  readonly progression?: number;
}

/** Form of {@link Cushion}. */
export const cushionShape: Shape = { stiffness: 'N/m', damping: 'N·s/m', progression: optional('N/m³') };

/**
 * The mode of a contact. It changes at events only: the right-hand side must not decide by position within a step. Pushing ends before
 * touching does where damping would have to pull.
 */
export interface Contact {
  readonly cushion: Cushion;
  touching: boolean;
  pushing: boolean;
}

/** Way pressed in and its speed, at a time and state; what it gives is read at once and may be filled anew by the next call. */
export type Pressing = (
  time: number,
  state: Float64Array,
) => { readonly depth: number; readonly speed: number };

/** Force of a cushion as though it could pull [N]. */
export function cushionForce(cushion: Cushion, depth: number, speed: number): number {
  const { stiffness, damping, progression = 0 } = cushion;
  return (stiffness + progression * depth * depth) * depth + damping * speed;
}

/** Its slope over the way [N/m]. */
export function cushionSlope({ stiffness, progression = 0 }: Cushion, depth: number): number {
  return stiffness + 3 * progression * depth * depth;
}

export function contactForce({ cushion, pushing }: Contact, depth: number, speed: number): number {
  return pushing ? cushionForce(cushion, depth, speed) : 0;
}

/** Whether a cushion that is touched pushes. Without damping it always does, also where it is touched just now. */
function pushes(cushion: Cushion, depth: number, speed: number): boolean {
  return cushion.damping === 0 || cushionForce(cushion, depth, speed) > 0;
}

/** A contact as it is at the start. */
export function contactAt(cushion: Cushion, depth: number, speed: number): Contact {
  const touching = depth > 0 || (depth === 0 && speed > 0);
  return { cushion, touching, pushing: touching && pushes(cushion, depth, speed) };
}

/** What happens to a contact, told to whoever keeps a record. */
export interface ContactHistory {
  readonly touches?: (time: number, depthSpeed: number) => void;
  readonly leaves?: (time: number) => void;
  readonly pushEnds?: (time: number) => void;
}

/** Touching and leaving, pushing and ceasing to push. */
export function contactEvents(
  contact: Contact,
  pressing: Pressing,
  history: ContactHistory,
): readonly Event[] {
  const { cushion } = contact;
  const force = (time: number, state: Float64Array): number => {
    const { depth, speed } = pressing(time, state);
    return cushionForce(cushion, depth, speed);
  };
  const stopPushing = (time: number): void => {
    if (contact.pushing) history.pushEnds?.(time);
    contact.pushing = false;
  };
  const touch: Event = {
    value: (time, state) => pressing(time, state).depth,
    direction: () => (contact.touching ? -1 : 1),
    happens: (time, state) => {
      contact.touching = !contact.touching;
      if (contact.touching) {
        const { depth, speed } = pressing(time, state);
        contact.pushing = pushes(cushion, depth, speed);
        history.touches?.(time, speed);
      } else {
        stopPushing(time);
        history.leaves?.(time);
      }
      return 'restart';
    },
  };
  const push: Event = {
    value: force,
    direction: () => (contact.touching ? (contact.pushing ? -1 : 1) : 0),
    happens: (time) => {
      if (contact.pushing) stopPushing(time);
      else contact.pushing = true;
      return 'restart';
    },
  };
  // Without damping it pushes as long as it touches.
  return cushion.damping === 0 ? [touch] : [touch, push];
}
