/** What is counted of a change at the bench. */
export type Measure = 'slow' | 'fast' | 'left' | 'push';

/** What a symptom asks for, the most telling first: more (1) or less (−1) of each. Common practice, no source. */
export interface Symptom {
  readonly asks: readonly { readonly measure: Measure; readonly sign: 1 | -1 }[];
  /** The same in words. */
  readonly words: string;
}

export const symptomNames = [
  'bottoms on landings',
  'kicks in fast bumps',
  'rolls or dives too fast',
  'turns in too slowly',
  'bounces after a landing',
  'creeps out on the stand',
] as const;

export type SymptomName = (typeof symptomNames)[number];

export const symptoms: Readonly<Record<SymptomName, Symptom>> = {
  'bottoms on landings': {
    asks: [
      { measure: 'left', sign: 1 },
      { measure: 'fast', sign: 1 },
    ],
    words: 'more stroke left in a landing, and more damping at the fast speed',
  },
  'kicks in fast bumps': {
    asks: [{ measure: 'fast', sign: -1 }],
    words: 'less damping at the fast speed',
  },
  'rolls or dives too fast': {
    asks: [{ measure: 'slow', sign: 1 }],
    words: 'more damping at the slow speed',
  },
  'turns in too slowly': {
    asks: [{ measure: 'slow', sign: -1 }],
    words: 'less damping at the slow speed',
  },
  'bounces after a landing': {
    asks: [
      { measure: 'slow', sign: 1 },
      { measure: 'push', sign: -1 },
    ],
    words: 'more damping at the slow speed, and less push of the gas',
  },
  'creeps out on the stand': {
    asks: [{ measure: 'push', sign: -1 }],
    words: 'less push of the gas',
  },
};
