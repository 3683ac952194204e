import { expect, test } from 'vitest';
import { firstCaution, firstFile, firstGuesses } from '../../lib/parts/first-file.js';
import { firstQuestions } from '../../lib/parts/first-questions.js';
import { assembleShock, benchSteps, readParts } from '../../lib/parts/index.js';
import { changed, smallFile } from './small-file.js';

// What is said to a reader who writes a parts file, as somebody read it and let it stand; `npm run words -- -u` writes the files anew. Read the difference before you commit it.

const petroleum = {
  firstLabel: '35 cSt',
  firstBase: 'petroleum',
  secondLabel: '450 cSt',
  secondBase: 'silicone',
} as const;

test('what the first steps ask, and how to find out', async () => {
  const all = [{}, petroleum].flatMap((answers) => firstQuestions(answers));
  const asked = [...new Map(all.map((question) => [question.key, question])).values()];
  const lines = asked.map(({ key, label, how, example }) => `${key}: ${label}\n  ${how}\n  ${example}`);
  const open = firstGuesses.map(({ what, how, line }) => `${what}: ${how}: ${line}`);
  await expect(`${[...lines, firstCaution, ...open].join('\n')}\n`).toMatchFileSnapshot(
    'words/first-steps.txt',
  );
});

test.each([
  ['first-file', {}],
  ['first-file-petroleum', petroleum],
] as const)('%s: what the steps write, with its notes', async (name, answers) => {
  await expect(firstFile(answers)).toMatchFileSnapshot(`words/${name}.txt`);
});

test('how to find out at the bench what a file does not say', async () => {
  const said = (['gas', 'inside', 'oilVolume', 'closing', 'seal'] as const).flatMap((quantity) => [
    `${quantity}:`,
    ...benchSteps(quantity),
  ]);
  await expect(`${said.join('\n')}\n`).toMatchFileSnapshot('words/bench-steps.txt');
});

const room = '    oil-volume: 3.2 ml\n    compensator: { kind: air-pocket, volume: 0.9 ml }\n';

test('what is assumed of a shock of which the file says only what makes room', async () => {
  const kinds = ['air-pocket', 'bladder', 'vented-bladder', 'foam', 'emulsion', 'none'];
  const said = [undefined, ...kinds].map((kind) => {
    const line = kind === undefined ? '' : `    compensator: { kind: ${kind} }\n`;
    const [build] = readParts(changed(room, line)).builds;
    if (build === undefined) throw new Error('no build');
    return [`${kind ?? 'nothing'}:`, ...assembleShock(build).assumptions].join('\n');
  });
  // Sizes are worked out in the tests of the assembly.
  const masked = said.join('\n\n').replaceAll(/\d[\d.]*/gu, '#');
  await expect(`${masked}\n`).toMatchFileSnapshot('words/assumed.txt');
});

/** What is said of a file that cannot be used. */
function refusedFor(text: string): string {
  try {
    readParts(text, 'my.yaml');
  } catch (error) {
    if (error instanceof Error) return error.message;
  }
  return 'accepted';
}

const dyno = (more: string, rows: string) =>
  `${smallFile}measurements:\n  - temperature: 20 °C\n    dyno: { ${more}record: "time (s),travel (mm),force (N)\\n${rows}" }\n`;
const rows = Array.from({ length: 40 }, (_, row) => `${row / 100},${row},${row}`).join('\\n');

test('what is refused of recordings, of times and of pistons', async () => {
  const said = [
    `${smallFile}recorded-stroke: { record: 3 }\n`,
    `${smallFile}recorded-stroke: { record: "${'1,2 '.repeat(130_000)}" }\n`,
    `${smallFile}measurements:\n  - { temperature: 20 °C, dyno: { record: 3 } }\n`,
    `${smallFile}measurements:\n  - { temperature: 20 °C, dyno: { record: "${'1,2 '.repeat(130_000)}" } }\n`,
    dyno('', rows),
    dyno('uncertainty: 0 N, ', rows.replaceAll(/,\d+,/gu, ',5,')),
    `${smallFile}day:\n  - { time: 3, temperature: 20 °C }\n`,
    changed('11.95 mm', '12.05 mm'),
  ].map(refusedFor);
  await expect(`${said.join('\n\n')}\n`).toMatchFileSnapshot('words/refused.txt');
});
