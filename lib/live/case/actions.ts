import { type PartsFile, partsFile } from '../../parts/parts-file.js';
import { type Case, caseOf } from './case.js';
import { failureText } from './failure.js';
import type { Session } from './session.js';
import { type Settings, settingsFor, settingsFrom } from './settings.js';

/** What a reader can do. */
export interface Actions {
  change(name: string, setting: string | readonly string[]): void;
  /** Back to the settings of the start; parts stay as they are. */
  reset(): void;
  /** Begins anew with a parts file from disk. */
  openFile(name: string, text: string): void;
  /** Goes on with a changed parts file, compared with what it was. */
  editFile(changed: () => PartsFile): void;
  /** Back to the case that the page came with. */
  back(): void;
  /** Follows the fragment of the address. */
  readAddress(): void;
}

/**
 * What a reader does to a session.
 *
 * @param session - the session
 * @param follow - called after each change
 * @param complain - told what is wrong with a parts file
 */
export function actions(session: Session, follow: () => void, complain: (text: string) => void): Actions {
  const { parameters } = session.notebook;
  const ask = (file: PartsFile, settings: Settings): void => {
    session.wanted = { file, settings };
    follow();
  };
  const begin = (start: Case): void => {
    session.start = start;
    ask(start.file, start.settings);
  };
  const fitting = ({ parts }: PartsFile, { settings, file }: Session['wanted']): Settings =>
    settingsFor(parts, parameters, { settings, before: file.parts });
  const attempt = (work: () => void): void => {
    try {
      work();
    } catch (error) {
      complain(failureText(error));
    }
  };
  return {
    change: (name, setting) => ask(session.wanted.file, { ...session.wanted.settings, [name]: setting }),
    reset: () => ask(session.wanted.file, fitting(session.wanted.file, session.start)),
    openFile: (name, text) =>
      attempt(() => {
        const file = partsFile(name, text);
        begin(caseOf(session.notebook, file, fitting(file, session.wanted)));
      }),
    editFile: (changed) =>
      attempt(() => {
        const file = changed();
        ask(file, fitting(file, session.wanted));
      }),
    back: () => begin(session.first),
    readAddress: () => {
      session.fromAddress = true;
      ask(session.wanted.file, settingsFrom(location.hash, parameters, session.start.settings));
    },
  };
}
