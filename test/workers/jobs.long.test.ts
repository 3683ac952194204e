import { expect, it } from 'vitest';
import { designSearch } from '../../lib/decisions/design/design-search.js';
import { mergedFronts } from '../../lib/decisions/design/merged-fronts.js';
import { planOf, pricesOf } from '../../lib/decisions/order/order-answer.js';
import { neededSets } from '../../lib/decisions/order/order-coverage.js';
import { orderPlan } from '../../lib/decisions/order/order-plan-by-program.js';
import { unpackedDemands } from '../../lib/decisions/order/packed-demands.js';
import { finish } from '../../lib/decisions/search/search.js';
import {
  blockSize,
  type Drawing,
  forceDraws,
  joined,
  sharesOf,
  toleranceShares,
} from '../../lib/decisions/spread/force-spread.js';
import type { TolerancedBuild } from '../../lib/decisions/spread/toleranced-build.js';
import { createOil } from '../../lib/fluid/oil/oil.js';
import { doJob, type JobMessage, type Jobs, type Range } from '../../lib/workers/jobs.js';
import { shockWith, silicone } from '../decisions/demo.js';
import { design } from '../decisions/design-case.js';
import { problem } from '../decisions/order-case.js';

// A thread does nothing but these jobs, so that pieces done here, in any order, must come together to what the search alone finds.

const build: TolerancedBuild = {
  damper: shockWith(4, 1.2e-3),
  oil: createOil(silicone(350)),
  temperature: 298.15,
  position: 0.0125,
  speeds: [-0.05, -0.3],
  tolerances: {
    holeDiameter: { kind: 'normal', standardDeviation: 0.02e-3 },
    gap: { kind: 'uniform', halfWidth: 0.01e-3 },
  },
};

/** What a job gives, as a message that went to a thread and back would bring it. */
async function done<Name extends keyof Jobs>(
  message: JobMessage & { readonly name: Name },
): Promise<Jobs[Name]['output']> {
  return structuredClone(await doJob(structuredClone(message)));
}

const backwards = <Piece, Output>(
  pieces: readonly Piece[],
  job: (piece: Piece) => Promise<Output>,
): Promise<readonly Output[]> =>
  Promise.all(pieces.toReversed().map(job)).then((outputs) => outputs.toReversed());

it('forces of pieces that begin and end anywhere are those of one drawing', async () => {
  const drawing: Drawing = { count: 900, seed: 7, sampling: 'random' };
  const ranges: readonly Range[] = [
    [0, 1],
    [1, 350],
    [350, 900],
  ];
  const pieces = await backwards(ranges, (range) =>
    done({ name: 'forces', input: { build, drawing, range } }),
  );
  expect(joined(pieces)).toEqual(forceDraws(build, drawing));
});

it('shares of the spread do not depend on how many blocks a piece has', async () => {
  const points = 2 * blockSize + 100;
  const whole = finish(toleranceShares(build, points, 7));
  const cuts: readonly (readonly Range[])[] = [
    [[0, points]],
    [
      [0, blockSize],
      [blockSize, points],
    ],
  ];
  for (const ranges of cuts) {
    const pieces = await backwards(ranges, (range) =>
      done({ name: 'sums', input: { build, seed: 7, range } }),
    );
    expect(sharesOf(build, pieces.flat())).toEqual(whole);
  }
});

it('fronts of one oil each merge into the front of all', async () => {
  const fronts = await backwards(design.oils, (oil) =>
    done({ name: 'design', input: { ...design, oils: [oil] } }),
  );
  expect(mergedFronts(fronts)).toEqual(finish(designSearch(design)));
});

it('demands of one temperature each, and the solver, make the order of the whole', async () => {
  const question = problem({});
  const packed = await backwards(question.temperatures, (temperature) =>
    done({ name: 'demands', input: { ...question, temperatures: [temperature] } }),
  );
  const demands = unpackedDemands(question, packed);
  const needed = neededSets(demands, question.owned);
  const set = await done({ name: 'order', input: { needed, prices: pricesOf(question) } });
  expect(finish(planOf(question, demands, set))).toEqual(await orderPlan(question));
});
