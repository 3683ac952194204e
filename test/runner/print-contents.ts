import path from 'node:path';
import { contents, removeFolders, run } from './sample-run.js';

// Run in a process of its own by the test of the bytes.
const { folder } = await run();
process.stdout.write(JSON.stringify(contents(path.join(folder, 'out'))));
removeFolders();
