// Stands in for vitest where many runs of a few tests must each begin at once: collects tests and runs them in order, in this process. Only what the tests of this project use.
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { expect as theirs } from 'vitest';

export { expectTypeOf, vi } from 'vitest';

const at = { folder: '.' };

/** Tells where the test file stands that comes next. */
export function standingIn(folder: string): void {
  at.folder = folder;
}

/** That of vitest, which would ask for the test that it runs to find a file. */
export const expect = new Proxy(theirs, {
  apply(target, self, values: Parameters<typeof theirs>) {
    const assertion = Reflect.apply(target, self, values);
    const matches = (file: string): void =>
      theirs(values[0]).toBe(readFileSync(path.resolve(at.folder, file), 'utf8'));
    return Object.defineProperty(assertion, 'toMatchFileSnapshot', { value: matches });
  },
});

type Body = (...values: never[]) => unknown;
type Place = () => unknown;

/** A named group of tests, with what runs before and after. */
interface Group {
  readonly name: string;
  readonly before: Place[];
  readonly after: Place[];
  readonly beforeEach: Place[];
  readonly afterEach: Place[];
  readonly inside: (Group | { readonly name: string; readonly run: Place })[];
}

const newGroup = (name: string): Group => ({
  name,
  before: [],
  after: [],
  beforeEach: [],
  afterEach: [],
  inside: [],
});
let open = newGroup('');
let finished: Place[] = [];

const bodyOf = (rest: readonly unknown[]): Body => rest.find((one) => typeof one === 'function') as Body;

/** Gives a way to declare the ways that tests use of it: for each of some values, and only where something is there. */
function declared(declare: (name: string, ...rest: readonly unknown[]) => void) {
  const each =
    (table: readonly unknown[]) =>
    (name: string, ...rest: readonly unknown[]): void => {
      for (const [place, row] of table.entries())
        declare(`${name} (${place + 1})`, () =>
          bodyOf(rest)(...((Array.isArray(row) ? row : [row]) as never[])),
        );
    };
  const none = Object.assign((): void => undefined, { each: () => (): void => undefined });
  const plain = Object.assign(declare, { each });
  return Object.assign(plain, { skipIf: (skipped: unknown) => (skipped ? none : plain), skip: none });
}

export const test = declared((name, ...rest) => {
  open.inside.push({ name, run: bodyOf(rest) as Place });
});
export const it = test;
export const describe = declared((name, ...rest) => {
  const around = open;
  open = newGroup(name);
  around.inside.push(open);
  bodyOf(rest)();
  open = around;
});
export const beforeAll = (place: Place): void => void open.before.push(place);
export const afterAll = (place: Place): void => void open.after.push(place);
export const beforeEach = (place: Place): void => void open.beforeEach.push(place);
export const afterEach = (place: Place): void => void open.afterEach.push(place);
export const onTestFinished = (place: Place): void => void finished.push(place);

/** Forgets what was declared. */
export function forget(): void {
  open = newGroup('');
}

/** Runs all that was declared since; ends with the first failure and says which it was. */
export async function runDeclared(): Promise<{ readonly tests: number; readonly failed?: string }> {
  const all = open;
  forget();
  const done = { tests: 0, name: '' };
  try {
    await runGroup(all, [], done);
    return { tests: done.tests };
  } catch (error) {
    return {
      tests: done.tests,
      failed: `${done.name}: ${error instanceof Error ? error.message : String(error)}`,
    };
  }
}

async function runGroup(
  group: Group,
  around: readonly Group[],
  done: { tests: number; name: string },
): Promise<void> {
  const groups = [...around, group];
  for (const place of group.before) await place();
  for (const one of group.inside) {
    if ('inside' in one) {
      await runGroup(one, groups, done);
      continue;
    }
    done.name = [...groups.map(({ name }) => name), one.name].filter(Boolean).join(' > ');
    finished = [];
    for (const { beforeEach: places } of groups) for (const place of places) await place();
    await one.run();
    for (const { afterEach: places } of groups) for (const place of places) await place();
    for (const place of finished) await place();
    done.tests++;
  }
  for (const place of group.after) await place();
}
