/** A bump of a track [m], [m/s]: a guess until a reader measures one. */
export const bumpLength = 0.15;
export const bumpSpeed = 6;
export const bumpHeight = 0.015;
