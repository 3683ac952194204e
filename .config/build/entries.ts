/** Entries of the library, the lowest first: each has a file with what it reaches and those before it do not. */
export const library = [
  'core',
  'units',
  'fluid',
  'fill',
  'motion',
  'decisions',
  'order',
  'measure',
  'parts',
  'plot',
  'page',
  'workers',
] as const;

/** The source of an entry. */
export function entryOf(name: (typeof library)[number]): string {
  return name === 'core' ? 'lib/index.ts' : `lib/${name}/index.ts`;
}

/** What each file of `dist` is made of. */
export const sources: Readonly<Record<string, string>> = {
  ...Object.fromEntries(library.map((name) => [name, entryOf(name)])),
  // What threads of the workers start; they look for it beside their own file.
  'shared/jobs': 'lib/workers/jobs.ts',
  render: 'lib/runner/packed/index.ts',
  command: 'lib/runner/packed/command.ts',
  // What the page of a user's notebook is bundled with.
  'live-page': 'lib/live/live-page.ts',
};
