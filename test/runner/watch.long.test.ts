import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { draftHtml } from '../../lib/runner/watch/draft-html.js';
import { fileChanges } from '../../lib/runner/watch/file-changes.js';
import { type PageServer, servePage } from '../../lib/runner/watch/page-server.js';

/** What a server answers; of an answer that does not end its first piece. */
interface Answer {
  readonly status: number | undefined;
  readonly type: string | undefined;
  readonly cache: string | undefined;
  readonly text: string;
}

describe('a page that is being written', () => {
  const page = {
    html: async (changes: number) => `page after ${changes}`,
    program: () => 'the program',
    kept: (address: string) => (address === '/kept/a.js' ? 'a module' : undefined),
  };
  let bundled = 0;
  let server: PageServer;
  beforeAll(async () => {
    server = await servePage(page, async () => {
      bundled += 1;
    });
  });
  afterAll(() => server.close());
  const ask = (
    place: string,
    { method = 'GET', host = new URL(server.address).host } = {},
  ): Promise<Answer> =>
    new Promise((resolve, reject) => {
      const asked = request(new URL(place, server.address), { method, headers: { host } }, (response) => {
        response.once('data', (piece: Buffer) => {
          const { statusCode: status, headers } = response;
          resolve({
            status,
            type: headers['content-type'],
            cache: headers['cache-control'],
            text: String(piece),
          });
          response.destroy();
        });
      });
      asked.on('error', reject);
      asked.end();
    });

  test('is served to this machine alone', () => {
    expect(server.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/u);
  });

  test('has its page, its program once it is bundled, and what a browser keeps', async () => {
    expect(await ask('/')).toMatchObject({
      status: 200,
      type: 'text/html; charset=utf-8',
      cache: 'no-store',
      text: 'page after 0',
    });
    expect(bundled).toBe(0);
    expect(await ask('/program.js')).toMatchObject({ status: 200, cache: 'no-store', text: 'the program' });
    expect(bundled).toBe(1);
    expect(await ask('/kept/a.js')).toMatchObject({
      status: 200,
      text: 'a module',
      cache: 'immutable, max-age=86400',
    });
    expect((await ask('/other.js')).status).toBe(404);
  });

  test('is not served under another name, and takes nothing', async () => {
    expect((await ask('/', { host: 'elsewhere.example' })).status).toBe(403);
    expect((await ask('/', { host: 'localhost:1' })).status).toBe(200);
    expect((await ask('/', { method: 'POST' })).status).toBe(405);
  });

  test('tells of a change: at once where it was missed, and else when it comes', async () => {
    // The address that the page itself asks.
    const listening = (changes: number): string =>
      /EventSource\('([^']*)'\)/u.exec(
        draftHtml('a', {}, { partsName: 'a', partsText: '', texts: {} }, changes),
      )?.[1] ?? '';
    const before = await ask(listening(0));
    expect(before).toMatchObject({ status: 200, type: 'text/event-stream', text: '\n' });
    const told = new Promise<string>((resolve, reject) => {
      request(new URL(listening(0), server.address), (response) => {
        let text = '';
        response.on('data', (piece: Buffer) => {
          text += String(piece);
          if (text === '\n') server.tell();
          if (text.includes('data')) {
            resolve(text);
            response.destroy();
          }
        });
      })
        .on('error', reject)
        .end();
    });
    expect(await told).toBe('\ndata: changed\n\n');
    expect((await ask('/')).text).toBe('page after 1');
    expect((await ask(listening(0))).text).toBe('data: changed\n\n');
    expect((await ask(listening(1))).text).toBe('\n');
  });
});

test('the page names what its program imports, and nothing in it ends a script', () => {
  const html = draftHtml(
    'mine',
    { 'a-package': '/kept/a.js' },
    { partsName: '</script>', partsText: '', texts: {} },
    3,
  );
  expect(html).toContain('{"imports":{"a-package":"/kept/a.js"}}');
  expect(html).toContain('for (const name of ["a-package"]) import(name)');
  expect(html.match(/<\/script>/gu)).toHaveLength(3);
});

describe('changes of files', () => {
  const folder = mkdtempSync(path.join(tmpdir(), 'dashpot-watch-'));
  const sources = path.join(folder, 'sources');
  mkdirSync(path.join(sources, 'deep'), { recursive: true });
  afterAll(() => rmSync(folder, { recursive: true }));

  test.each([
    ['beside the sources', path.join(folder, 'parts.yaml')],
    ['among the sources', path.join(sources, 'parts.yaml')],
  ])('are told once each, with whether there was a source: the parts file %s', async (_, partsFile) => {
    const heard: boolean[] = [];
    const stop = fileChanges([sources], partsFile, (inSources) => heard.push(inSources));
    const save = async (file: string): Promise<void> => {
      const before = heard.length;
      writeFileSync(file, 'new');
      writeFileSync(file, 'newer');
      const patience = Date.now() + 20_000;
      while (heard.length === before && Date.now() < patience) await pause(10);
      expect(heard.length).toBeGreaterThan(before);
      // Until what belongs to the same save has been told too.
      await pause(200);
    };
    await save(path.join(sources, 'deep/a.ts'));
    expect(heard).toEqual(heard.map(() => true));
    heard.length = 0;
    await save(partsFile);
    expect(heard).toEqual(heard.map(() => false));
    heard.length = 0;
    if (path.dirname(partsFile) === folder) {
      writeFileSync(path.join(folder, 'other.yaml'), 'new');
      await pause(100);
      expect(heard).toEqual([]);
    }
    stop();
  });
});
