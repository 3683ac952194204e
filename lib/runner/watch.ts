import { watch } from 'node:fs';
import { createServer, type IncomingMessage, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import type { ParameterTexts } from '../page/index.js';
import { draft } from './draft.js';

/** What is watched. */
export interface Watched {
  readonly notebookFolder: string;
  readonly name: string;
  readonly partsFile: string;
  readonly given: ParameterTexts;
  /** Folders whose files make the page: library and notebooks. */
  readonly sources: readonly string[];
}

/** A page under watch. */
export interface Watch {
  /** Address of the page on this machine. */
  readonly address: string;
  close(): Promise<void>;
}

/** Editors write a file in several steps; so long they are one change [ms]. */
const settled = 40;

/** Serves the page of a notebook to this machine only, and has it loaded again after each save of a source or of the parts file. */
export async function watchNotebook({
  notebookFolder,
  name,
  partsFile,
  given,
  sources,
}: Watched): Promise<Watch> {
  const page = await draft(notebookFolder, name, partsFile, given);
  const open = new Set<ServerResponse>();
  let timer: ReturnType<typeof setTimeout> | undefined;
  const changed = (): void => {
    clearTimeout(timer);
    timer = setTimeout(() => {
      for (const response of open) response.write('data: changed\n\n');
    }, settled);
  };
  const watchers = sources.map((folder) => watch(folder, { recursive: true }, changed));
  // The folder, since an editor may put a new file in the place of the old one.
  watchers.push(
    watch(path.dirname(partsFile), (_event, file) => {
      if (file === path.basename(partsFile)) changed();
    }),
  );
  const server = createServer((request, response) => {
    void answer(request, response).catch((error: unknown) =>
      send(response, 500, 'text/plain', String(error)),
    );
  });
  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    // A page of another site that has this address under its own name is not served.
    if (!/^(?:127\.0\.0\.1|localhost)(?::\d+)?$/u.test(request.headers.host ?? ''))
      return send(response, 403, 'text/plain', 'this machine only');
    if (request.url === '/') return send(response, 200, 'text/html', await page.html());
    if (request.url === '/program.js') return send(response, 200, 'text/javascript', await page.program());
    if (request.url !== '/changes') return send(response, 404, 'text/plain', 'nothing here');
    response.writeHead(200, { 'content-type': 'text/event-stream', 'cache-control': 'no-store' });
    response.write('\n');
    open.add(response);
    response.on('close', () => open.delete(response));
  };
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}/`,
    async close() {
      for (const watcher of watchers) watcher.close();
      clearTimeout(timer);
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      await page.dispose();
    },
  };
}

function send(response: ServerResponse, status: number, type: string, text: string): void {
  response.writeHead(status, { 'content-type': `${type}; charset=utf-8`, 'cache-control': 'no-store' });
  response.end(text);
}
