/**
 * Colours that remain distinct under the common forms of colour blindness (Okabe & Ito, "Color Universal Design",
 * 2008, jfly.uni-koeln.de/color), without its yellow, which is too pale for a line on white.
 */
export const seriesColours = [
  '#0072b2',
  '#d55e00',
  '#009e73',
  '#cc79a7',
  '#000000',
  '#e69f00',
  '#56b4e9',
] as const;

/** Colours of everything that is not a series. A dark page maps these and black to its own. */
export const inkColours = {
  ink: '#1c2126',
  muted: '#565f69',
  rule: '#7b858f',
  grid: '#e2e6ea',
  /** Behind text that crosses a line. */
  paper: '#ffffff',
} as const;
