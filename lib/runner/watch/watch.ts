import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { ParameterTexts } from '../../page/index.js';
import { type Draft, draft } from './draft.js';
import { fileChanges } from './file-changes.js';

/** What is watched. */
export interface Watched {
  readonly notebookFolder: string;
  readonly name: string;
  /** Absolute path. */
  readonly partsFile: string;
  readonly texts: ParameterTexts;
  /** Folders whose files make the page: library and notebooks. */
  readonly sources: readonly string[];
}

/** A page under watch. */
export interface Watch {
  /** Address of the page on this machine. */
  readonly address: string;
  close(): Promise<void>;
}

/** Serves the page of a notebook to this machine only, and has it loaded again after each save of a source or of the parts file. */
export async function watchNotebook(watched: Watched): Promise<Watch> {
  const { notebookFolder, name, partsFile, texts, sources } = watched;
  const page = await draft(notebookFolder, name, partsFile, texts);
  await page.rebuild();
  const audience = listeners();
  // The page loads itself again while the program is bundled.
  let bundled = Promise.resolve();
  const stopWatching = fileChanges(sources, partsFile, (inSources) => {
    if (inSources)
      bundled = bundled.then(page.rebuild).then((other) => {
        if (other) audience.tell();
      });
    audience.tell();
  });
  const server = createServer((request, response) => {
    void answer(request, response, page, audience, () => bundled).catch((error: unknown) =>
      send(response, 500, 'text/plain', String(error)),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    async close() {
      stopWatching();
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      await bundled;
      await page.dispose();
    },
  };
}

async function answer(
  { headers, method, url = '' }: IncomingMessage,
  response: ServerResponse,
  page: Draft,
  audience: Listeners,
  bundled: () => Promise<void>,
): Promise<void> {
  // A page of another site that has this address under its own name is not served.
  if (!/^(?:127\.0\.0\.1|localhost)(?::\d+)?$/u.test(headers.host ?? ''))
    return send(response, 403, 'text/plain', 'this machine only');
  if (method !== 'GET') return send(response, 405, 'text/plain', 'only GET');
  if (url === '/') return send(response, 200, 'text/html', await page.html(audience.count()));
  if (url === '/program.js') {
    await bundled();
    return send(response, 200, 'text/javascript', page.program());
  }
  if (url.startsWith('/changes-after-')) return audience.add(response, Number(url.split('-')[2]));
  const kept = page.kept(url);
  if (kept === undefined) return send(response, 404, 'text/plain', 'nothing here');
  return send(response, 200, 'text/javascript', kept, 'immutable, max-age=86400');
}

/** Pages that wait for a change. */
interface Listeners {
  /** How many changes there were. */
  count(): number;
  /** Adds a page that was made after so many changes; it is told at once where it has missed one. */
  add(response: ServerResponse, seen: number): void;
  tell(): void;
}

function listeners(): Listeners {
  const open = new Set<ServerResponse>();
  let count = 0;
  const event = 'data: changed\n\n';
  return {
    count: () => count,
    add(response, seen) {
      response.writeHead(200, {
        'content-type': 'text/event-stream',
        'cache-control': 'no-store',
        'x-content-type-options': 'nosniff',
      });
      response.write(seen === count ? '\n' : event);
      open.add(response);
      response.on('close', () => open.delete(response));
    },
    tell() {
      count += 1;
      for (const response of open) response.write(event);
    },
  };
}

function send(
  response: ServerResponse,
  status: number,
  type: string,
  text: string,
  cacheControl = 'no-store',
): void {
  response.writeHead(status, {
    'content-type': `${type}; charset=utf-8`,
    'cache-control': cacheControl,
    'x-content-type-options': 'nosniff',
  });
  response.end(text);
}
