/** Drop height of the landing that gives the fast speed [m]: wheels a hand's width off the ground. */
export const dropHeight = 0.1;
