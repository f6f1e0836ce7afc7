import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

/** A folder served on this machine under a path of its own. */
export interface Served {
  /** Address of the folder, with a slash at its end. */
  readonly url: string;
  close(): Promise<void>;
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.json': 'application/json',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
  '.gz': 'application/gzip',
};

/**
 * Serves a folder as any plain server would.
 *
 * @param folder the folder
 * @param path where it stands, "/some/where/": a notebook must work from any path
 */
export async function serveFolder(folder: string, path: string): Promise<Served> {
  const server = createServer(async (request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://localhost');
    const name = pathname.startsWith(path) ? normalize(`/${pathname.slice(path.length)}`) : undefined;
    const file = name === undefined ? undefined : join(folder, name === '/' ? 'index.html' : name);
    if (file === undefined || !(await isFile(file))) {
      response.writeHead(404).end();
      return;
    }
    response.writeHead(200, { 'content-type': types[extname(file)] ?? 'application/octet-stream' });
    createReadStream(file).pipe(response);
  });
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  const { port } = server.address() as AddressInfo;
  return {
    url: `http://127.0.0.1:${port}${path}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

async function isFile(path: string): Promise<boolean> {
  try {
    return (await stat(path)).isFile();
  } catch {
    return false;
  }
}
