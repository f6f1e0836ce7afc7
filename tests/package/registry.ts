import { createReadStream } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { basename, join } from 'node:path';
import type { Manifest } from './packages.js';
import type { Tarball } from './tarballs.js';

/** A registry on this machine. */
export interface Registry {
  readonly url: string;
  close(): Promise<void>;
}

/**
 * Serves tarballs as a package registry does, so that the real installer runs without a network, on the versions that
 * this project is tested with.
 *
 * @param folder where the tarballs lie
 * @param packages what each holds
 */
export async function localRegistry(
  folder: string,
  packages: readonly { readonly tarball: Tarball; readonly manifest: Manifest }[],
): Promise<Registry> {
  const server = createServer((request, response) => {
    const path = decodeURIComponent((request.url ?? '/').slice(1));
    if (path.startsWith('-/')) {
      createReadStream(join(folder, basename(path)))
        .on('error', () => response.writeHead(404).end())
        .pipe(response);
      return;
    }
    const offered = packages.filter(({ tarball }) => tarball.name === path);
    if (offered.length === 0) {
      response.writeHead(404).end('{}');
      return;
    }
    const versions = offered.map(({ tarball: { version, filename, integrity }, manifest }) => [
      version,
      { ...manifest, dist: { tarball: `${url()}-/${filename}`, integrity } },
    ]);
    const latest = offered.at(-1)?.tarball.version;
    response.writeHead(200, { 'content-type': 'application/json' });
    response.end(JSON.stringify({ name: path, 'dist-tags': { latest }, versions: Object.fromEntries(versions) }));
  });
  const url = () => `http://127.0.0.1:${(server.address() as AddressInfo).port}/`;
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  return {
    url: url(),
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
