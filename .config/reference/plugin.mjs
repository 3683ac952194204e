import { statSync } from 'node:fs';
import path from 'node:path';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));

/** How a folder of the library is imported. */
const entryName = (/** @type {string} */ folder) =>
  folder === 'lib/runner/packed' ? 'dashpot/render' : folder.replace(/^lib/u, 'dashpot');

/** Names entries as they are imported, and pages by their headings; links to folders lead to those of the repository. */
export function load(/** @type {import('typedoc').Application} */ app) {
  app.converter.on('resolveBegin', ({ project }) => {
    for (const module of project.children ?? []) module.name = entryName(module.name);
    for (const page of project.documents ?? []) page.name = headingOf(page) ?? page.name;
  });
  app.converter.on('resolveEnd', ({ project }) => {
    for (const page of project.documents ?? [])
      for (const part of page.content) {
        if (part.kind !== 'relative-link' || part.target === undefined) continue;
        const linked = project.files.resolve(part.target, project);
        if (typeof linked !== 'string') continue;
        const file = path.resolve(root, linked);
        if (!statSync(file, { throwIfNoEntry: false })?.isDirectory()) continue;
        part.target = undefined;
        part.text = path.posix.join('../../..', path.relative(root, file));
      }
  });
}

function headingOf(page) {
  const text = page.content.map((part) => part.text).join('');
  return /^# (?<heading>.+)$/mu.exec(text)?.groups?.heading;
}
