#!/usr/bin/env node
import { missingPeers, neededPeers } from './missing-peers.js';

// What needs packages beside this one is loaded after it is clear that they are there.
const args = process.argv.slice(2);
const missing = missingPeers(neededPeers(args));
if (missing.length > 0) {
  process.stderr.write(`dashpot needs more packages for this:\nnpm install ${missing.join(' ')}\n`);
  process.exitCode = 2;
} else {
  const { runPacked } = await import('./run-packed.js');
  await runPacked(args);
}
