/** A small good file; tests change one thing in it. Its line numbers appear in the expected errors. */
export const smallFile = `dashpot: 1
about: a file for tests
oils:
  - name: clear 350
    base: silicone
    viscosity: 350 cSt
    at: 25 °C
    bottle: { volume: 60 ml, price: 7.90 EUR }
  - name: mineral
    base: petroleum
    viscosity: 32 cSt
    at: 40 °C
    viscosity-index: 95
pistons:
  - name: two 1.7
    diameter: 11.95 mm
    thickness: 2.5 mm
    holes:
      - { count: 2, diameter: 1.7 mm }
shocks:
  - name: short 12
    bore: 12 mm
    shaft: 3 mm
    stroke: 24 mm
    oil-volume: 3.2 ml
    compensator: { kind: air-pocket, volume: 0.9 ml }
springs:
  - { name: soft, rate: 0.4 N/mm, free-length: 45 mm }
builds:
  - name: front
    shock: short 12
    piston: two 1.7
    oil: clear 350
    spring: soft
`;

/** The small file with one text replaced; the text must be there. */
export function changed(from: string, to: string): string {
  if (!smallFile.includes(from)) throw new Error(`"${from}" is not in the small file`);
  return smallFile.replace(from, () => to);
}
