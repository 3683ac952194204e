/** An oil temperature that a day on the track can bring. */
export const temperature = { dimension: 'temperature', unit: '°C', min: -20, max: 60, step: 1 } as const;

/** A shaft speed from creeping to a hard landing. */
export const speed = { dimension: 'speed', unit: 'mm/s', min: 5, max: 3000, step: 5 } as const;
