/** What came of moving a control. */
export interface Moved {
  readonly option: string;
  /** Whether what the page says changed: words, tables, and the numbers behind its pictures. */
  readonly changed: boolean;
  /** What the page complained of. */
  readonly fault: string;
}

/**
 * Run in the page: moves each control once to another value, always from the start, with every disclosure open. It stands by itself:
 * nothing outside of it is in the page.
 */
export async function moveEachControl(): Promise<readonly Moved[]> {
  const whole = document.querySelector('main');
  const reset = document.querySelector('.panel button');
  if (whole === null || !(reset instanceof HTMLElement)) return [];
  for (const part of whole.querySelectorAll(':scope>:not(.controls) details')) part.setAttribute('open', '');
  const redrawn = async (act: () => void): Promise<void> => {
    const begun = performance.now();
    act();
    const done = () => performance.getEntriesByName('redraw').some(({ startTime }) => startTime >= begun);
    while (!done()) await new Promise(requestAnimationFrame);
  };
  /** What is out of the window follows once the reader pauses. */
  const rested = async (): Promise<void> => {
    // After this redraw: what followed the one before may come while this one is on its way.
    const drawn = performance
      .getEntriesByName('redraw')
      .map(({ startTime, duration }) => startTime + duration);
    const done = () =>
      performance.getEntriesByName('whole').some(({ startTime }) => startTime >= Math.max(...drawn));
    while (!done()) await new Promise(requestAnimationFrame);
  };
  const said = (): string => {
    const copy = whole.cloneNode(true) as Element;
    // Settings in words follow every control; pictures get the starting case beside them.
    for (const part of copy.querySelectorAll('.controls, .settings, svg')) part.remove();
    return copy.textContent;
  };
  const tell = (input: Element): void => {
    input.dispatchEvent(new Event('input', { bubbles: true }));
  };
  /** The ways to move a control, best first; the next one is for where a value does not go with the others. */
  const movesOf = (control: Element): readonly (() => void)[] => {
    const field = control.querySelector('input[type=number]');
    const select = control.querySelector('select');
    const boxes = [...control.querySelectorAll<HTMLInputElement>('input[type=checkbox]:enabled')];
    if (field instanceof HTMLInputElement) {
      const [value, min, max, step] = [field.value, field.min, field.max, field.step].map(Number) as [
        number,
        number,
        number,
        number,
      ];
      const tenth = Math.max(step, Math.round((max - min) / 10 / step) * step);
      return [value + tenth, value - tenth, value + step, value - step]
        .filter((other) => other >= min && other <= max)
        .map((other) => () => {
          field.value = String(Number(other.toPrecision(9)));
          tell(field);
        });
    }
    if (select !== null)
      return [...select.options]
        .filter(({ selected }) => !selected)
        .map(({ value }) => () => {
          select.value = value;
          tell(select);
        });
    return boxes.map((box) => () => {
      box.checked = !box.checked;
      tell(box);
    });
  };
  const moved: Moved[] = [];
  await redrawn(() => reset.click());
  const before = said();
  for (const { id } of whole.querySelectorAll('.fields .help')) {
    const control = document.getElementById(id)?.parentElement;
    const result = { option: id.replace(/^set-|-help$/gu, ''), changed: false, fault: 'it cannot be moved' };
    for (const move of control ? movesOf(control) : []) {
      await redrawn(move);
      result.fault = whole.querySelector('.fault')?.textContent ?? '';
      if (result.fault === '' && said() === before) await rested();
      result.changed = said() !== before;
      await redrawn(() => reset.click());
      if (result.fault === '') break;
    }
    moved.push(result);
  }
  return moved;
}
