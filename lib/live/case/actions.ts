import { type PartsFile, partsFile } from '../../parts/parts-file.js';
import { fileText } from '../../parts/source/file-text.js';
import { takeFile, takeMeasured } from './bench.js';
import { choicesIn, otherChoices } from './choices.js';
import { failureText } from './failure.js';
import { arrive, faultOf, type Session, unchosen } from './session.js';

/** What a reader can do. */
export interface Actions {
  change(name: string, setting: string | readonly string[]): void;
  /** Back to the settings of the start; parts stay as they are. */
  reset(): void;
  /** Begins anew with a parts file from disk. */
  openFile(name: string, bytes: Uint8Array): void;
  /** Goes on with a changed parts file, compared with what it was. */
  editFile(changed: () => PartsFile): void;
  /** Back to the parts that the page came with. */
  back(): void;
  /** Takes the shocks that were measured as measured, or as stated. */
  use(measured: boolean): void;
  /** Comes to the page: with the choices that its address names, else with those that the reader made before. */
  arrive(address: string | undefined): void;
}

/**
 * What a reader does to a session.
 *
 * @param session - the session
 * @param follow - called after each change
 * @param complain - told what is wrong with a parts file
 */
export function actions(session: Session, follow: () => void, complain: (text: string) => void): Actions {
  const { bench, notebook } = session;
  const { parameters } = notebook;
  const take = (changed: () => PartsFile, opened: boolean): void => {
    try {
      takeFile(bench, changed(), opened);
      arrive(session);
      follow();
    } catch (error) {
      complain(failureText(error));
    }
  };
  return {
    change(name, setting) {
      const { [name]: _refused, ...refused } = session.refused;
      const fault = faultOf(session, name, setting);
      session.refused = fault === undefined ? refused : { ...refused, [name]: setting };
      if (fault === undefined) {
        const { [name]: _before, ...others } = bench.choices;
        bench.choices = others;
        session.without.delete(name);
        // What is as it would be anyway is not chosen, and follows the parts again.
        if (String(setting) !== String(unchosen(session, name)))
          bench.choices = { ...others, [name]: setting };
      }
      follow();
    },
    reset() {
      session.refused = {};
      bench.choices = otherChoices(parameters, bench.choices);
      follow();
    },
    openFile: (name, bytes) => take(() => partsFile(name, fileText(bytes, name)), true),
    editFile: (changed) => take(changed, false),
    back: () => take(() => bench.origin, true),
    use(measured) {
      takeMeasured(bench, measured);
      arrive(session);
      follow();
    },
    arrive(address) {
      arrive(session);
      session.address = address === undefined ? undefined : choicesIn(address, parameters);
      if (session.address !== undefined) session.without.clear();
      follow();
    },
  };
}
