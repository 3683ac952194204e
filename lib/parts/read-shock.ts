import { refuse } from '../base/checks.js';
import { optional, requireShape, someText } from '../base/shape.js';
import { createOil, type Oil } from '../fluid/oil/oil.js';
import { type AssembledShock, assembleShock } from './assembly/assembled-shock.js';
import type { Build } from './parts.js';
import { readParts } from './read-parts.js';

/**
 * A build of a parts file, ready for the core: plain data throughout.
 *
 * @public
 */
export interface ShockOfFile extends AssembledShock {
  readonly build: Build;
  /** The oil that the build names. */
  readonly oil: Oil;
}

/**
 * From the text of a parts file to damper, fill and oil of one build: `readParts`, {@link assembleShock} and `createOil` in one call.
 *
 * @param text - the file, YAML 1.2 or JSON, at most 1 MB
 * @param name - of the build; may be left out where the file has one
 * @throws PartsFileError for a file that cannot be read; InputError where no build has that name, or several and no name is given; ShockFault where statements
 * of the build contradict each other
 * @public
 */
export function readShock(text: string, name: string | undefined = undefined): ShockOfFile {
  requireShape({ text, name }, { text: someText, name: optional(someText) });
  const { builds } = readParts(text);
  const [first, second] = builds;
  const build = name === undefined ? first : builds.find((one) => one.name.normalize() === name.normalize());
  if (build === undefined || (name === undefined && second !== undefined)) {
    const names = builds.map((one) => JSON.stringify(one.name)).join(', ');
    refuse(name, 'name', '', builds.length === 0 ? 'of a file that has builds' : `one of ${names}`);
  }
  return { ...assembleShock(build), build, oil: createOil(build.oil.definition) };
}
