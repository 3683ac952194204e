import path from 'node:path';

// `npm ci` in this folder is for those who work with the sources, which need no build; what is packed or installed from git does.
const forSources =
  process.env['npm_command'] === 'ci' &&
  path.resolve(process.env['INIT_CWD'] ?? '') === path.resolve(import.meta.dirname, '..');
if (!forSources) await import('./build.js');
