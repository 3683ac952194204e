import type { Start } from '../../live/case/start.js';

/**
 * The page of a notebook that is being written: it loads the program as a module, says what does not bundle or does not run, and loads itself anew
 * after each change. No built page has this text.
 *
 * @param name - the notebook
 * @param addresses - the address of each module that the program imports by name
 * @param start - what the program starts from
 * @param changes - how many changes there were before
 */
export function draftHtml(
  name: string,
  addresses: Readonly<Record<string, string>>,
  start: Start,
  changes: number,
): string {
  return `<!doctype html><html lang="en"><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
<title>${name}</title><body><header></header><main></main><script type="application/json" id="start">${inScript(start)}</script>
<script type="importmap">${inScript({ imports: addresses })}</script>
<script type="module">
new EventSource('/changes-after-${changes}').onmessage = () => location.reload();
// They are ready when the program has been bundled; what is wrong with one is told with the program.
for (const name of ${inScript(Object.keys(addresses))}) import(name).catch(() => undefined);
import('/program.js').catch(({ message }) => {
  const line = document.createElement('pre');
  line.className = 'fault';
  line.textContent = message;
  document.querySelector('main').replaceChildren(line);
});
</script></body></html>`;
}

/** Data inside a script: nothing but this sign can end it. */
function inScript(data: unknown): string {
  return JSON.stringify(data).replaceAll('<', '\\u003c');
}
