import { access, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { firstCaution, firstFault, firstFile } from '../parts/first-file.js';
import { type FirstAnswers, type FirstQuestion, firstQuestions } from '../parts/first-questions.js';
import { CommandError } from './command/command-error.js';

/** Where a first file is asked for and written. */
export interface Desk {
  readonly workingFolder: string;
  /** How the user calls the command. */
  readonly calledAs: string;
  readonly print: (line: string) => void;
  /** The next line that the user types; nothing once the input has ended. */
  readonly nextLine: () => Promise<string | undefined>;
}

/**
 * Asks for a first parts file step by step, and writes it. A file that is there is left as it is.
 *
 * @param name - path of the file as written
 * @param desk - where to ask
 * @throws CommandError for a file that is there, a folder that is not, or an input that ends too early
 */
export async function askFirstFile(
  name: string,
  { workingFolder, calledAs, print, nextLine }: Desk,
): Promise<void> {
  const file = path.resolve(workingFolder, name);
  const there = new CommandError(`${name} is there already and is left as it is; name another file`);
  if (
    await access(file).then(
      () => true,
      () => false,
    )
  )
    throw there;
  print(
    'A first parts file, one step at a time. Write each value with its unit; Ctrl+C ends without writing anything.',
  );
  print(firstCaution);
  let answers: FirstAnswers = {};
  // What was answered decides what is asked next.
  for (let question = nextOf(answers); question !== undefined; question = nextOf(answers)) {
    const { key, label, how } = question;
    const steps = firstQuestions(answers);
    const step = steps.findIndex((one) => one.key === key) + 1;
    print(`\n${step} of ${steps.length}: ${label}, ${suggestion(question)}\n${how}`);
    for (;;) {
      const line = await nextLine();
      if (line === undefined)
        throw new CommandError(`the input ended before "${label}" was answered; nothing is written`);
      const fault = firstFault({ ...answers, [key]: line }, question);
      if (fault === undefined) {
        answers = { ...answers, [key]: line };
        break;
      }
      print(`${fault}\nOnce more: ${label}, ${suggestion(question)}`);
    }
  }
  await writeFile(file, firstFile(answers), { flag: 'wx' }).catch((error: NodeJS.ErrnoException) => {
    if (error.code === 'EEXIST') throw there;
    throw new CommandError(
      `cannot write ${name}: ${error.code === 'ENOENT' ? 'there is no such folder' : (error.code ?? error.message)}`,
    );
  });
  print(
    `\n${file}\nWhat you did not measure is guessed; the notes in the file say how to measure it. Next:\n${calledAs} --parts ${name}`,
  );
}

function nextOf(answers: FirstAnswers): FirstQuestion | undefined {
  return firstQuestions(answers).find(({ key }) => answers[key] === undefined);
}

function suggestion({ example, options }: FirstQuestion): string {
  return options === undefined ? `for example ${example}` : options.join(' or ');
}
