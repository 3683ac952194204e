import { html } from '../../page/html/html.js';
import { cameOutAs } from '../../page/measured-builds.js';
import type { MeasuredUse } from '../case/measured-use.js';
import { elementIn } from '../document/element-in.js';
import { domNodes } from '../document/patch.js';

/** The switch between shocks as stated and as measured. */
export interface MeasuredSwitch {
  readonly element: Element;
  show(use: MeasuredUse): void;
}

/**
 * Makes the switch, which is not seen where no build was measured.
 *
 * @param used - told whether the shocks are to be taken as measured
 */
export function measuredSwitch(used: (measured: boolean) => void): MeasuredSwitch {
  const [element] = domNodes(
    html`<div class="control one use" hidden><label for="parts-use">Measured shocks</label><select id="parts-use" aria-describedby="parts-use-help" autocomplete="off"><option value="stated">as stated</option><option value="measured">as measured</option></select><p class="help" id="parts-use-help"></p></div>`,
  );
  if (!(element instanceof HTMLElement)) throw new TypeError('the switch is one element');
  const [select, help] = [elementIn(element, 'select'), elementIn(element, '.help')];
  select.addEventListener('input', () => used(select.value === 'measured'));
  return {
    element,
    show(use) {
      const none = use.fitted.length === 0;
      element.hidden = none && use.changed.length === 0;
      select.disabled = none;
      select.value = use.wanted && !none ? 'measured' : 'stated';
      help.textContent = useText(use);
    },
  };
}

/** What the builds came out as, and which of them cannot be taken so. */
export function useText({ fitted, changed }: Pick<MeasuredUse, 'fitted' | 'changed'>): string {
  const came = fitted.map(({ build, measured }) => `${build}: ${cameOutAs(measured)}.`);
  const stale =
    changed.length === 0
      ? []
      : [
          `${changed.join(' and ')}: changed since the measurements were fitted, so taken as stated; make the pages anew to fit them again.`,
        ];
  return [...came, ...stale].join(' ');
}
