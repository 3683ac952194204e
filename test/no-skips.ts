import type { Reporter } from 'vitest/node';

/** Ends the run with a fault where a test was skipped. */
const noSkips: Reporter = {
  onTestRunEnd(modules) {
    const skipped = modules.flatMap((module) => [...module.children.allTests('skipped')]);
    if (skipped.length === 0) return;
    process.exitCode = 1;
    const names = skipped.map(({ module, fullName }) => `  ${module.relativeModuleId}: ${fullName}`);
    process.stderr.write(`CI forbids skipped tests:\n${names.join('\n')}\n`);
  },
};

/** On a contributor's machine a test skips where a tool is absent; under CI, where .ci/run installs all of them, none may. */
export const reporters = process.env['CI'] === 'true' ? ['default', noSkips] : ['default'];
