import { type PartList, unknownReference } from './part-list.js';
import type { Build } from './parts.js';
import type { FieldPath, Finding } from './source/finding.js';
import { literal } from './source/literal.js';

/**
 * The build that an entry was made of: the one it names, or the only one.
 *
 * @param name - as the entry has it
 * @param path - of the entry
 * @param list - the builds as the file has them
 * @param builds - those that are good
 * @param findings - to which what is wrong is added
 */
export function referredBuild(
  name: string | undefined,
  path: FieldPath,
  list: PartList<unknown>,
  builds: readonly Build[],
  findings: Finding[],
): Build | undefined {
  const [only, second] = builds;
  const build =
    name === undefined ? only : builds.find((candidate) => candidate.name.normalize() === name.normalize());
  if (name === undefined && second !== undefined) {
    const names = builds.map((candidate) => literal(candidate.name)).slice(0, 6);
    const message = `is missing; write which of the builds it is: ${names.join(', ')}${builds.length > names.length ? ', …' : ''}`;
    findings.push({ path: [...path, 'build'], message });
  } else if (name !== undefined && build === undefined && !list.names.includes(name.normalize())) {
    const known = { ...list, names: builds.map((candidate) => candidate.name) };
    const message = unknownReference('build', name, known, findings.length);
    findings.push({ path: [...path, 'build'], message });
  } else if (build === undefined && list.entries.length === 0) {
    findings.push({ path, message: 'needs a build that it is one of: there are none under "builds"' });
  }
  return build;
}
