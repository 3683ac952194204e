/** Closer than this two numbers are the same to a reader. */
const same = 0.01;

/** Letter of the choice whose number is nearest, by ratio. */
export function nearestChoice(found: number, choices: readonly number[]): string {
  const off = choices.map((choice) => Math.abs(Math.log(found / choice)));
  return letter(off.indexOf(Math.min(...off)));
}

/** Whether what is left is the same fast as slow (A), less (B) or more (C). */
export function slowAgainstFast(slow: number, fast: number): string {
  if (Math.abs(fast / slow - 1) < same) return letter(0);
  return letter(fast < slow ? 1 : 2);
}

/** Whether the change is larger slow (A), larger fast (B), or the same (C). */
export function largerChange(slow: number, fast: number): string {
  const [one, other] = [Math.abs(Math.log(slow)), Math.abs(Math.log(fast))];
  if (Math.abs(one - other) < same) return letter(2);
  return letter(one > other ? 0 : 1);
}

const letter = (index: number): string => 'ABC'.charAt(index);
