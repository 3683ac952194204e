/** Run in the page: its width, its fonts, and the texts that leave their picture. */
export function measure() {
  const shown = [...document.querySelectorAll('figure svg')].filter(
    (svg) => svg.getBoundingClientRect().width > 0,
  );
  const outside = shown.flatMap((svg) => {
    const box = svg.getBoundingClientRect();
    return [...svg.querySelectorAll('text')].filter((text) => {
      const own = text.getBoundingClientRect();
      return own.left < box.left || own.right > box.right || own.top < box.top || own.bottom > box.bottom;
    });
  });
  return {
    scrollWidth: document.documentElement.scrollWidth,
    fonts: [...document.fonts].map((font) => `${font.family} ${font.weight} ${font.status}`),
    outside: outside.map((text) => text.textContent),
  };
}

/** Run in the page: what axe finds against WCAG 2.2 A and AA and its own good practice, but for the rules left out. */
export async function violations(leftOut: readonly string[]): Promise<readonly string[]> {
  const { axe } = globalThis as unknown as { axe: typeof import('axe-core') };
  const { violations: found } = await axe.run({
    // Of what passes only the count is kept, not the place of each element.
    resultTypes: ['violations'],
    rules: Object.fromEntries(leftOut.map((rule) => [rule, { enabled: false }])),
  });
  return found.flatMap(({ id, nodes }) =>
    nodes.slice(0, 3).map(({ html }) => `${id}: ${html.slice(0, 200)}`),
  );
}

/** Run in the page: closes what a reader of the page has to open. */
export function closeDisclosures(): void {
  for (const part of document.querySelectorAll('main>:not(.controls) details')) part.removeAttribute('open');
}
