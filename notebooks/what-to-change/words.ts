import type { TableBlock } from '../../lib/page/blocks/plain-blocks.js';
import { grams, millimetres } from '../base/bench-wording.js';
import { celsius, finePercent, listed, newtons, shaftSpeed } from '../base/wording.js';
import { type Conditions, changeIn, type Effect, type Measured } from './effects.js';
import type { Measure, SymptomName } from './symptoms.js';

const words: Readonly<Record<Measure, string>> = {
  slow: 'slow damping',
  fast: 'fast damping',
  left: 'stroke left in the landing',
  push: 'push fully in',
};

/** `1.1 N`, `15.1 mm`, `17 g`; what is not there says why. */
export function valueText(measure: Measure, value: number | undefined): string {
  if (value === undefined) return measure === 'left' ? 'unknown' : 'locks';
  if (measure === 'push') return grams(value);
  return measure === 'left' ? millimetres(value) : newtons(value);
}

function changedText(measure: 'slow' | 'fast', before: Measured, after: Measured): string {
  const part = changeIn(measure, before, after);
  if (Math.abs(part) < 0.005) return 'same';
  return `${part > 0 ? '+' : '−'}${finePercent(Math.abs(part))}`;
}

/** Each change in numbers, those that help first. */
export function changesTable(
  before: Measured,
  effects: readonly Effect[],
  symptom: SymptomName,
  at: Conditions,
): TableBlock {
  return {
    kind: 'table',
    id: 'changes',
    title: `What each change would do, where the car ${symptom}`,
    note: `Slow is rebound at ${shaftSpeed(at.slow)}, fast is pushed in at ${shaftSpeed(at.fast)}, both at ${celsius(at.temperature)}; left: what a drop from ${millimetres(at.drop)} leaves of the stroke; push: of the gas with the shaft fully in at ${celsius(at.bench)}. What helps is common practice, no source; the numbers are of this build.`,
    table: {
      columns: ['Change', 'Slow', 'Fast', 'Left', 'Push', 'For that'].map((label) => ({ label, unit: '' })),
      rows: [
        [
          'as it is',
          newtons(before.slow),
          newtons(before.fast),
          valueText('left', before.left),
          valueText('push', before.push),
          '',
        ],
        ...[...effects]
          .sort((a, b) => b.gain - a.gain)
          .map(({ name, after, verdict }) => [
            name,
            changedText('slow', before, after),
            changedText('fast', before, after),
            valueText('left', after.left),
            valueText('push', after.push),
            verdict,
          ]),
      ],
    },
  };
}

/** What helps most and what works against the symptom. */
export function answerOf(
  name: string,
  symptom: SymptomName,
  first: Measure,
  before: Measured,
  effects: readonly Effect[],
): string {
  if (effects.length === 0)
    return `Where ${name} ${symptom}, nothing at the bench could be tried with what the file lists; what it lacks stands below.`;
  const helping = effects.filter(({ verdict }) => verdict === 'helps').sort((a, b) => b.gain - a.gain);
  const [best] = helping;
  const against = effects.filter(({ verdict }) => verdict === 'works against it').map((one) => one.name);
  const start =
    best === undefined
      ? `Where ${name} ${symptom}, nothing at the bench that was tried helps without working against it too.`
      : `Where ${name} ${symptom}, "${best.name}" helps most: ${words[first]} ${valueText(first, best.after[first])} instead of ${valueText(first, before[first])}${besides(first, before, best)}.`;
  if (against.length === 0) return start;
  return `${start} ${listed(against.slice(0, 3).map((one) => `"${one}"`))} ${against.length === 1 ? 'works' : 'work'} against it.`;
}

/** What comes with the best change. */
function besides(first: Measure, before: Measured, { after }: Effect): string {
  const others = (['slow', 'fast'] as const).filter((measure) => measure !== first);
  return others.map((measure) => `, ${words[measure]} ${changedText(measure, before, after)}`).join('');
}
