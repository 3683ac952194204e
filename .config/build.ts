import { execFileSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { bundlePackage } from './build/bundle.js';
import { distFolder, root } from './build/folders.js';
import { layMaterials } from './build/materials.js';

// Makes `dist`: the declarations by the compiler, the entries as few files, so that Node starts them fast, and what pages are made with.
rmSync(distFolder, { recursive: true, force: true });
execFileSync(process.execPath, ['node_modules/typescript/bin/tsc', '-p', '.config/tsconfig.build.json'], {
  cwd: root,
  stdio: 'inherit',
});
await layMaterials(await bundlePackage());
