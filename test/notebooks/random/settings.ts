import fc from 'fast-check';
import type { Notebook } from '../../../lib/page/index.js';
import type { Parameter } from '../../../lib/page/parameters/parameters.js';
import type { ParameterTexts } from '../../../lib/page/parameters/read-parameters.js';
import type { Parts } from '../../../lib/parts/index.js';

type Text = string | readonly string[];

/** What a reader may set one control to: an end of its range, or anything between; undefined where there is nothing to choose. */
function settings(parameter: Parameter, parts: Parts): fc.Arbitrary<Text> | undefined {
  switch (parameter.kind) {
    case 'quantity': {
      const { min, max, unit } = parameter;
      const share = fc.oneof(
        fc.constantFrom(0, 1),
        fc.integer({ min: 0, max: 1000 }).map((at) => at / 1000),
      );
      return share.map((at) => `${Number((min + (max - min) * at).toPrecision(4))} ${unit}`);
    }
    case 'integer':
      return fc.integer({ min: parameter.min, max: parameter.max }).map(String);
    case 'choice':
      return fc.constantFrom(...parameter.options);
    case 'part':
    case 'parts': {
      const names = parts[parameter.list].map(({ name }) => name);
      if (names.length === 0) return undefined;
      if (parameter.kind === 'part') return fc.constantFrom(...names);
      return fc.shuffledSubarray(names, {
        minLength: 1,
        maxLength: Math.min(names.length, parameter.atMost),
      });
    }
  }
}

/** Controls of which one is to be set below the next: pages refuse another order, and say so. */
const rising = [
  ['slow', 'middle', 'fast'],
  ['coldest', 'hottest'],
];

/** Some of the controls of a page set to anything that they take, the same for the same seed; half of them as the page starts. */
export function randomSettings({ parameters }: Notebook, parts: Parts, seed: number): ParameterTexts {
  const each = Object.entries(parameters).flatMap(([name, parameter]) => {
    const texts = settings(parameter, parts);
    return texts === undefined ? [] : [[name, fc.option(texts, { nil: undefined })] as const];
  });
  const [drawn = {}] = fc.sample(fc.record(Object.fromEntries(each)), { seed, numRuns: 1 });
  const texts = Object.fromEntries(
    Object.entries(drawn).flatMap(([name, text]) => (text === undefined ? [] : [[name, text]])),
  );
  const inOrder = rising.flatMap((names) => {
    const set = names.filter((name) => name in texts);
    const sorted = set
      .map((name) => texts[name])
      .toSorted((a, b) => Number.parseFloat(String(a)) - Number.parseFloat(String(b)));
    return set.map((name, place) => [name, sorted[place] ?? ''] as const);
  });
  return { ...texts, ...Object.fromEntries(inOrder) };
}
