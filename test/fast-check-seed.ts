import fc from 'fast-check';

// A fixed seed makes every run the same; fast-check prints it with the path of a failing case. `npm run random` gives another, and more cases.
const { FAST_CHECK_SEED: seed, FAST_CHECK_RUNS: runs } = process.env;

fc.configureGlobal({
  seed: seed === undefined ? 20_260_923 : Number(seed),
  numRuns: runs === undefined ? 200 : Number(runs),
});
