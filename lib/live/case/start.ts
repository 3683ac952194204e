import type { ParameterTexts } from '../../page/parameters/read-parameters.js';
import type { FittedBuild } from '../../parts/fitted-builds.js';

/** What a live page starts from: what the command was given. */
export interface Start {
  readonly partsName: string;
  readonly partsText: string;
  readonly texts: ParameterTexts;
  /** What the measurements of its builds say, fitted when the document was made. */
  readonly fitted?: readonly FittedBuild[];
  /** Of the parts file; what is kept on the device is kept for it. Only a document of all notebooks has one. */
  readonly fingerprint?: string;
}

/** Reads what the page carries for its program. */
export function readStart(): Start {
  const start: Start = JSON.parse(document.getElementById('start')?.textContent ?? '');
  return start;
}
