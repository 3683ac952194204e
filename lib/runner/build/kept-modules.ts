import { createHash } from 'node:crypto';
import { chartModule } from './chart-module.js';
import { packageModules } from './package-modules.js';

/** What a page that is being written loads beside its own program, in a form that a browser can keep. */
export interface KeptModules {
  /** The address of each by the name that it is imported under. */
  readonly addresses: Readonly<Record<string, string>>;
  /** The text of each by its address; another text has another address. */
  readonly texts: ReadonlyMap<string, string>;
}

/** Makes those modules, and makes them anew only where they have to change. */
export interface ModuleKeeper {
  /** The modules for the names that a program imports. */
  modules(names: readonly string[]): Promise<KeptModules>;
  dispose(): Promise<void>;
}

/** The name that a program imports the compiled charts under. */
const charts = 'compiled-specs';

/** Opens a keeper. */
export async function moduleKeeper(): Promise<ModuleKeeper> {
  const chart = await chartModule();
  let packages = kept('', [], new Map());
  let known = '';
  return {
    async modules(names) {
      const wanted = names.filter((name) => name !== charts).toSorted();
      if (String(wanted) !== known) {
        packages = kept('packages', wanted, await packageModules(wanted));
        known = String(wanted);
      }
      const drawn = kept('charts', [charts], new Map([[`${charts}.js`, await chart.text()]]));
      return {
        addresses: { ...packages.addresses, ...drawn.addresses },
        texts: new Map([...packages.texts, ...drawn.texts]),
      };
    },
    dispose: () => chart.dispose(),
  };
}

function kept(kind: string, names: readonly string[], files: ReadonlyMap<string, string>): KeptModules {
  const hash = createHash('sha256')
    .update([...files.values()].join(''))
    .digest('hex')
    .slice(0, 12);
  const address = (file: string): string => `/${kind}-${hash}/${file}`;
  return {
    addresses: Object.fromEntries(names.map((name) => [name, address(`${name}.js`)])),
    texts: new Map([...files].map(([file, text]) => [address(file), text])),
  };
}
