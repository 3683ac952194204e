/** The invented shock of two independent programs (C with CVODE, Python with SciPy Radau): 380 mm²/s, 0.9 ml of air with an exponent of 1.4. */
export const referenceShock = `dashpot: 1
oils: [{ name: oil, base: silicone, viscosity: 380 cSt, at: 20 °C, density: 970 kg/m³ }]
pistons: [{ name: two 1.7, diameter: 11.94 mm, thickness: 2.5 mm, holes: [{ count: 2, diameter: 1.7 mm }] }]
shocks:
  - name: short
    bore: 12 mm
    shaft: 3 mm
    stroke: 24 mm
    oil-volume: 3.2 ml
    compensator: { kind: air-pocket, volume: 0.9 ml, exponent: 1.4 }
    closing: { shaft: 0 mm, free-air: 0 ml, temperature: 20 °C }
    seal: { moving-friction: 0.18 N, breakaway-friction: 0.27 N }
builds: [{ name: front, shock: short, piston: two 1.7, oil: oil }]
`;
