import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readParts } from '../../lib/parts/index.js';
import { askFirstFile } from '../../lib/runner/ask-first-file.js';

describe('a first parts file that is asked for', () => {
  let folder: string;
  beforeEach(() => {
    folder = mkdtempSync(path.join(tmpdir(), 'dashpot-first-'));
  });
  afterEach(() => rmSync(folder, { recursive: true, force: true }));

  /** Types these lines at the questions; what was said, and what was refused. */
  async function asked(
    ...typed: readonly string[]
  ): Promise<{ readonly said: string; readonly refused: string }> {
    const [said, left] = [[] as string[], [...typed]];
    const desk = {
      workingFolder: folder,
      calledAs: 'npx dashpot',
      print: (line: string) => said.push(line),
      nextLine: async () => left.shift(),
    };
    const refused = await askFirstFile('mine.yaml', desk).then(
      () => '',
      (error: Error) => error.message,
    );
    return { said: said.join('\n'), refused };
  }

  const written = (): string => readFileSync(path.join(folder, 'mine.yaml'), 'utf8');
  const good = ['12 mm', '3 mm', '25 mm', '11.9 mm', '2.5 mm', '1.6 mm', '2', '30 wt', 'silicone', ''];

  it('is accepted by the reader, and says what to do next', async () => {
    const { said, refused } = await asked(...good);
    expect(refused).toBe('');
    expect(said).toContain('npx dashpot --parts mine.yaml');
    expect(said).toContain('A first parts file, one step at a time. Write each value with its unit;');
    expect(said).toContain(
      'What you did not measure is guessed; the notes in the file say how to measure it.',
    );
    expect(readParts(written()).pistons[0]?.piston.holes).toMatchObject([{ count: 2, diameter: 0.0016 }]);
  });

  it('asks again, with the reason, at the step where nonsense is typed', async () => {
    const { said, refused } = await asked('12 mm', '30 cSt', '3 mm', ...good.slice(2));
    expect(refused).toBe('');
    expect(said).toMatch(
      /2 of 10.*\n.*\n"30 cSt" is a kinematic viscosity.*\nOnce more: Diameter of the shaft/u,
    );
    expect(readParts(written()).shocks[0]?.shaftDiameter).toBe(0.003);
  });

  it('asks on for a second bottle, and writes it', async () => {
    const { said, refused } = await asked(...good.slice(0, -1), '35 cSt', 'petroleum', '40 °C', '95');
    expect(refused).toBe('');
    expect(said).toMatch(/11 of 11: What the second oil is made of, silicone or petroleum\n/u);
    expect(said).toMatch(/13 of 13: Its viscosity index, for example 100\n/u);
    expect(readParts(written()).oils.map(({ definition }) => definition.base)).toEqual([
      'silicone',
      'petroleum',
    ]);
  });

  it('writes nothing where the input ends early', async () => {
    const { refused } = await asked('12 mm');
    expect(refused).toBe('the input ended before "Diameter of the shaft" was answered; nothing is written');
    expect(readdirSync(folder)).toEqual([]);
  });

  it('says why it cannot write, and leaves a file that came while it asked', async () => {
    const to = (name: string, meanwhile = () => {}) => {
      const left = [...good];
      const nextLine = async () => {
        if (left.length === 1) meanwhile();
        return left.shift();
      };
      return askFirstFile(name, { workingFolder: folder, calledAs: '', print: () => {}, nextLine }).then(
        () => '',
        (error: Error) => error.message,
      );
    };
    expect(await to('gone/mine.yaml')).toBe('cannot write gone/mine.yaml: there is no such folder');
    const late = () => writeFileSync(path.join(folder, 'late.yaml'), 'late');
    expect(await to('late.yaml', late)).toBe(
      'late.yaml is there already and is left as it is; name another file',
    );
    expect(readFileSync(path.join(folder, 'late.yaml'), 'utf8')).toBe('late');
  });

  it('leaves a file that is there as it is', async () => {
    writeFileSync(path.join(folder, 'mine.yaml'), 'mine');
    const { said, refused } = await asked(...good);
    expect([said, refused]).toEqual([
      '',
      'mine.yaml is there already and is left as it is; name another file',
    ]);
    expect(written()).toBe('mine');
  });
});
