/** Contrast ratio of two colours `#rrggbb` (W3C, WCAG 2.2, definitions of relative luminance and contrast ratio). */
export function contrast(one: string, other: string): number {
  const [darker, lighter] = [luminance(one), luminance(other)].toSorted((a, b) => a - b);
  return ((lighter ?? 0) + 0.05) / ((darker ?? 0) + 0.05);
}

function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const part = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return part <= 0.040_45 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * (red ?? 0) + 0.7152 * (green ?? 0) + 0.0722 * (blue ?? 0);
}
