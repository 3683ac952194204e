import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { PartsFileError, readParts } from '../../lib/parts/index.js';
import {
  connect,
  content,
  hasChromium,
  open,
  plain,
  type Rendered,
  rendered,
  skipReason,
  type Watched,
} from './chromium.js';
import { demoParts, testNotebooks } from './notebook-folders.js';

const oils = (entries: string): string => `dashpot: 1
about: Invented.
oils:
${entries}
pistons:
  - { name: mine, diameter: 11.9 mm, thickness: 2 mm, holes: [{ count: 2, diameter: 1.5 mm }] }
`;
const oil = (name: string, viscosity = '300 cSt'): string =>
  `  - { name: ${JSON.stringify(name)}, base: silicone, viscosity: ${viscosity}, at: 25 °C }`;
const script = '<img src=x onerror=alert(1)><script>alert(2)</script>';

describe.skipIf(!hasChromium)(`the reader's own parts in a live page${skipReason}`, () => {
  let browser: Browser;
  let built: Rendered;
  let watched: Watched;
  let page: Page;

  beforeAll(async () => {
    built = await rendered('all-controls', testNotebooks, demoParts);
    browser = await connect();
    watched = await open(browser, built.address);
    ({ page } = watched);
    await page.locator('.parts summary').click();
  });

  afterAll(async () => {
    await browser?.close();
  });

  const chooseBytes = (name: string, buffer: Buffer) =>
    page.locator('#parts-open').setInputFiles({ name, mimeType: 'text/yaml', buffer });
  const choose = (name: string, text: string) => chooseBytes(name, Buffer.from(text));
  const answer = () => plain(page.locator('.answer'));
  const fault = () => plain(page.locator('.fault'));
  const options = () => page.locator('#parts-which option').allTextContents();
  const removeButton = () => page.getByRole('button', { name: 'Remove this part' });
  const copyAs = async (name: string): Promise<void> => {
    await page.locator('#parts-copy').fill(name);
    await page.locator('#parts-copy').press('Enter');
  };
  const saved = async (): Promise<string> => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save parts file' }).click(),
    ]);
    return (await content(download)).toString();
  };
  const quiet = () => expect([watched.requests, watched.lines]).toEqual([[], []]);

  it('are opened from disk, and everything follows', async () => {
    await choose('mine.yaml', oils([oil('thin'), oil('thick', '900 cSt')].join('\n')));
    await expect.poll(answer).toContain('mine at 50 % gives 5.00 N with thin and thick');
    expect(await page.locator('#set-oils-0').isChecked()).toBe(true);
    expect(await page.locator('.parts b').textContent()).toBe('mine.yaml');
    quiet();
  });

  // Node's own encoders, apart from the decoder of the page; a sign beyond ASCII is in each of them.
  it.each([
    ['UTF-16 with its mark', (text: string) => Buffer.from(`\uFEFF${text}`, 'utf16le')],
    ['UTF-16, big end first', (text: string) => Buffer.from(`\uFEFF${text}`, 'utf16le').swap16()],
    ['the line ends of old computers', (text: string) => Buffer.from(text.replaceAll('\n', '\r'))],
  ])('are read in %s', async (what, bytes) => {
    await choose('mine.yaml', oils(oil('other')));
    await expect.poll(answer).toContain('with other');
    await chooseBytes('old.yaml', bytes(oils(oil(`${what} °`))));
    await expect.poll(answer).toContain(`with ${what} °`);
    quiet();
  });

  it('in Latin-1 are refused at the line of the first such sign, in the words of the command line', async () => {
    await chooseBytes('old.yaml', Buffer.from(oils(oil('thin')), 'latin1'));
    await expect
      .poll(fault)
      .toBe(
        'old.yaml:4:1 this line holds a sign, such as ° or µ, that is not in UTF-8; open the file in a text editor, save it in the encoding UTF-8, and look whether the sign is right',
      );
    quiet();
  });

  it.each([
    ['a fault in the syntax', 'dashpot: 1\noils:\n\t- x'],
    ['an unknown key', 'dashpot: 1\noils:\n  - name: a\n    viscosty: 3 cSt\n'],
    ['not a number', oils(oil('a', '.nan'))],
    ['a number without end', oils(oil('a', '1e999 cSt'))],
    ['a huge number', oils(oil('a', '1e40 cSt'))],
    ['a hostile key', `dashpot: 1\n${JSON.stringify(script)}: 1\n`],
    ['no parts at all', ''],
  ])(
    'with %s are refused in the words of the command line, and nothing else happens',
    async (_what, text) => {
      const before = await answer();
      await choose('bad.yaml', text);
      await expect.poll(fault).toBe(errorOf(text, 'bad.yaml'));
      expect(await answer()).toBe(before);
      expect(await page.locator('img, main script').count()).toBe(0);
      quiet();
    },
  );

  it('with a hundred thousand oils are refused', async () => {
    const text = oils(Array.from({ length: 100_000 }, (_oil, index) => oil(`oil ${index}`)).join('\n'));
    await choose('huge.yaml', text);
    await expect.poll(fault).toContain('must have at most 1 MB');
    quiet();
  });

  it('with a list longer than a file may have are refused', async () => {
    await choose(
      'long.yaml',
      oils(Array.from({ length: 1001 }, (_oil, index) => oil(`o${index}`)).join('\n')),
    );
    await expect.poll(fault).toContain('must have at most 1000 entries, got 1001');
    quiet();
  });

  it('show a name that is a script as a text, everywhere', async () => {
    await choose('hostile.yaml', oils(oil(script)));
    await expect.poll(answer).toContain(script);
    await page.locator('#line summary').click();
    expect(await page.locator('#set-oils-0').getAttribute('value')).toBe(script);
    expect(await page.locator('#ends th[scope=row]').textContent()).toBe(script);
    expect(await page.locator('#parts-which option').first().textContent()).toBe(`Oil ${script}`);
    expect(await page.locator('img, main script').count()).toBe(0);
    quiet();
  });

  it('are changed in the form, keep the focus, and are compared with what they were', async () => {
    await choose('mine.yaml', `# my notes\n${oils(oil('thin'))}`);
    await expect.poll(answer).toContain('with thin');
    await page.locator('#parts-which').selectOption('Oil thin');
    await page.locator('#part-oils-0-name').fill('thinner');
    await page.keyboard.press('Tab');
    await expect.poll(answer).toContain('with thinner');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('part-oils-0-base');
    expect(await page.locator('#line .wide svg').innerHTML()).toContain('starting case');
    await page.locator('#part-oils-0-viscosity').fill('many');
    await page.keyboard.press('Enter');
    await expect.poll(fault).toContain('mine.yaml:5:');
    expect(await fault()).toContain('oils[0].viscosity');
    quiet();
  });

  it('are saved with the change and nothing else', async () => {
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.getByRole('button', { name: 'Save parts file' }).click(),
    ]);
    expect(download.suggestedFilename()).toBe('mine.yaml');
    const saved = (await content(download)).toString();
    expect(saved).toBe(`# my notes\n${oils(oil('thin')).replace('"thin"', '"thinner"')}`);
  });

  it('are copied under a name of the reader, and the copy is shown', async () => {
    await choose('mine.yaml', `# my notes\n${oils(`${oil('thin')} # clear`)}`);
    await expect.poll(answer).toContain('with thin');
    await copyAs(script);
    await expect.poll(options).toEqual(['Oil thin', `Oil ${script}`, 'Piston mine']);
    expect(await page.locator('#parts-which').inputValue()).toBe('oils 1');
    expect(await page.locator('#part-oils-1-name').inputValue()).toBe(script);
    expect(await page.locator('#parts-copy').inputValue()).toBe('');
    expect(await page.locator('.told').textContent()).toContain(`${script} is in the list`);
    expect(await page.locator('img, main script').count()).toBe(0);
    await page.locator('#set-oils-1').check();
    await expect.poll(answer).toContain(`with thin and ${script}`);
    expect((await saved()).split('\n').slice(4, 6)).toEqual([
      `${oil('thin')} # clear`,
      `${oil(script)} # clear`,
    ]);
    quiet();
  });

  it('are not copied under a name that is taken, or under none', async () => {
    const before = await options();
    await copyAs('thin');
    await expect.poll(fault).toContain('oils[2].name: must be a name of its own, got "thin"');
    await copyAs(' ');
    await expect.poll(fault).toContain('oils[2].name: must be a name of at least one letter');
    expect(await options()).toEqual(before);
    quiet();
  });

  it('are removed, but not the last of a list', async () => {
    await removeButton().click();
    await expect.poll(options).toEqual(['Oil thin', 'Piston mine']);
    expect(await page.evaluate(() => document.activeElement?.textContent)).toBe('Remove this part');
    await expect.poll(answer).toContain('with thin,');
    expect(await fault()).toBe('');
    await removeButton().click();
    await expect.poll(fault).toBe('mine.yaml:5:5 oils[0]: must stay: it is the only one of its list');
    expect(await saved()).toBe(`# my notes\n${oils(`${oil('thin')} # clear`)}`);
    quiet();
  });

  it('are not removed while something else in the file names them', async () => {
    await page.getByRole('button', { name: 'Parts of this page' }).click();
    await expect.poll(fault).toBe('');
    await page.locator('#parts-which').selectOption('Oil clear 350');
    await removeButton().click();
    await expect
      .poll(fault)
      .toMatch(/^demo-parts\.yaml:\d+:5 oils\[1\]: must stay: builds\[0\]\.oil, .* name it$/u);
    expect(await options()).toContain('Oil clear 350');
    quiet();
  });

  it('give way to the parts that the page came with', async () => {
    await page.getByRole('button', { name: 'Parts of this page' }).click();
    await expect.poll(answer).toContain('two 1.7 at 50 %');
    expect(await fault()).toBe('');
    expect(await page.locator('#line .wide svg').innerHTML()).not.toContain('starting case');
    quiet();
  });
});

/** What the reader of parts files says of a text; the command line prints it as it is. */
function errorOf(text: string, name: string): string {
  try {
    readParts(text, name);
  } catch (error) {
    if (error instanceof PartsFileError) return error.message;
  }
  // A file without parts is read; the notebook then has nothing to show.
  return '';
}
