import { type Build, readParts } from '../../lib/parts/index.js';
import { changed } from './small-file.js';

const stated = '    oil-volume: 3.2 ml\n    compensator: { kind: air-pocket, volume: 0.9 ml }\n';

/** π/4 12² · 34 + 500 − 300 = 4045.3 mm³ of room with the 3 mm shaft fully out, and 169.6 mm³ less with it fully in. */
export const inside = '    inside: { length: 34 mm, cap-volume: 0.5 ml, solid-volume: 0.3 ml }\n';

/** The small file with other lines for what makes room. */
export function fileWith(lines: string, ofBuild = ''): string {
  return `${changed(stated, lines)}${ofBuild}`;
}

/** Its build. */
export function buildWith(lines: string, ofBuild = ''): Build {
  const [build] = readParts(fileWith(lines, ofBuild)).builds;
  if (build === undefined) throw new Error('the file has no build');
  return build;
}
