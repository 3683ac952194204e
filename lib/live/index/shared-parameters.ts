import type { Notebook } from '../../page/notebook.js';
import type { Parameters } from '../../page/parameters/parameters.js';

/** On so many pages a parameter is worth a control on the index. */
const onPages = 4;

/** The parameters that many pages have, in the order in which the pages first name them. */
export function sharedParameters(notebooks: readonly Notebook[]): Parameters {
  const counts = new Map<string, number>();
  for (const { parameters } of notebooks)
    for (const name of Object.keys(parameters)) counts.set(name, (counts.get(name) ?? 0) + 1);
  const all = notebooks.toReversed().flatMap(({ parameters }) => Object.entries(parameters));
  const first = new Map(all);
  const shared = [...counts].filter(([, count]) => count >= onPages).map(([name]) => name);
  const build = shared.filter((name) => name === 'build');
  return Object.fromEntries(
    [...build, ...shared.filter((name) => name !== 'build')].flatMap((name) => {
      const parameter = first.get(name);
      const help = `Chosen once for ${counts.get(name)} pages.`;
      return parameter === undefined ? [] : [[name, { ...parameter, help }] as const];
    }),
  );
}
