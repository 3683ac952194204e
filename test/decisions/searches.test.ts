import { expect, onTestFinished, test } from 'vitest';
import { mergedFronts } from '../../lib/decisions/design/merged-fronts.js';
import { speedRange } from '../../lib/decisions/match/speed-weights.js';
import { between, finishInSlices, partOf } from '../../lib/decisions/search/search.js';
import { deviatedGas } from '../../lib/decisions/spread/toleranced-build.js';
import { sealedGas } from '../../lib/gas/gas.js';

function* threeSteps() {
  yield 0;
  yield 0.5;
  yield 1;
  return 'done';
}

// By hand: half of the way from 0.2 to 0.8 is 0.5.
test('a part of a search tells how far the whole is', () => {
  expect([...between(threeSteps(), 0.2, 0.8)]).toEqual(
    [0.2, 0.5, 0.8].map((part) => expect.closeTo(part, 12)),
  );
  expect(() => [...between(threeSteps(), 0.5, 0.5)]).toThrow('to - from must be greater than 0');
  const seen: number[] = [];
  partOf({ onProgress: (done) => seen.push(done) }, 0.2, 0.8).onProgress?.(0.5);
  expect(seen).toEqual([expect.closeTo(0.5, 12)]);
});

test('a search pauses only once its slice is over, and tells then how far it is', async () => {
  const real = performance.now;
  onTestFinished(() => {
    performance.now = real;
  });
  const told = async (each: number) => {
    let clock = 0;
    performance.now = () => clock;
    function* slow() {
      for (const part of [0.25, 0.5, 0.75]) {
        clock += each;
        yield part;
      }
      return 'done';
    }
    const seen: number[] = [];
    expect(await finishInSlices(slow(), { onProgress: (done) => seen.push(done) })).toBe('done');
    return seen;
  };
  expect(await told(20)).toEqual([0.25, 0.5, 0.75, 1]);
  expect(await told(0)).toEqual([1]);
  expect(await told(7)).toEqual([0.5, 1]);
});

test('fronts that were searched apart add up what they computed and what did not fit', () => {
  const none = { front: [] };
  expect(
    mergedFronts([
      { ...none, computed: 5, unfit: 2 },
      { ...none, computed: 7, unfit: 3 },
    ]),
  ).toEqual({
    computed: 12,
    unfit: 5,
    front: [],
  });
});

// By hand: √(0.1 · 0.4) = 0.2, and in three steps 0.1, 0.2 and 0.4.
test('speeds are spread evenly in ratio, a single one in the middle, both ways', () => {
  const speeds = (count: number) => speedRange(0.1, 0.4, count).map(({ speed }) => Number(speed.toFixed(9)));
  expect(speeds(1)).toEqual([-0.2, 0.2]);
  expect(speeds(3)).toEqual([-0.4, -0.2, -0.1, 0.1, 0.2, 0.4]);
});

test('a gas that would lose all of itself is refused with what there is', () => {
  const gas = sealedGas({ volume: 1e-6 });
  expect(deviatedGas(gas, -4e-7).rooms[0]?.volume).toBeCloseTo(6e-7, 15);
  expect(() => deviatedGas(gas, -2e-6)).toThrow(
    'tolerances.gasVolume must be below the gas of 0.000001 m³, so that some is left',
  );
});
