import type { Notebook } from '../../page/index.js';
import type { RunFacts } from './render-notebook.js';

/** What pages are made with: the sources of the repository, or what the package holds ready-made. */
export interface Workshop {
  readonly version: string;
  /** How the user calls the command. */
  readonly calledAs: string;
  /** The notebooks that come with the library, in their order. */
  notebooks(): Promise<readonly Notebook[]>;
  /** What the pages of these notebooks have in common. */
  facts(names: readonly string[]): Promise<RunFacts>;
  /** What the page of a notebook of the user is made with. */
  ownFacts(own: OwnNotebook): Promise<RunFacts>;
  /**
   * The file of an entry of the library by the name that it is imported under, as in `dashpot/page`, for a notebook of the user; nothing for a
   * name of something else.
   */
  entryFile(name: string): string | undefined;
}

/** A notebook of the user. */
export interface OwnNotebook {
  readonly notebook: Notebook;
  /** Absolute path. */
  readonly file: string;
}
