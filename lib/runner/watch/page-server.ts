import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import type { Draft } from './draft.js';

/** What serves a page to this machine only. */
export interface PageServer {
  /** Address of the page on this machine. */
  readonly address: string;
  /** Tells the pages that are open of a change. */
  tell(): void;
  close(): Promise<void>;
}

/**
 * Serves a page that is being written.
 *
 * @param page - what is served
 * @param bundled - ends when the program is that of the sources as they are
 */
export async function servePage(
  page: Pick<Draft, 'html' | 'program' | 'kept'>,
  bundled: () => Promise<void>,
): Promise<PageServer> {
  const audience = listeners();
  const server = createServer((request, response) => {
    void answer(request, response, page, audience, bundled).catch((error: unknown) =>
      send(response, 500, 'text/plain', String(error)),
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    tell: audience.tell,
    async close() {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}

async function answer(
  { headers, method, url = '' }: IncomingMessage,
  response: ServerResponse,
  page: Pick<Draft, 'html' | 'program' | 'kept'>,
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
