import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Plugin } from 'vite';

/**
 * Writes the service worker that keeps the notebook usable without a network: the template `serviceWorker.js` with
 * the list of all files of this build and a version drawn from their names and contents.
 */
export function offline(): Plugin {
  return {
    name: 'beamkeep-offline',
    apply: 'build',
    enforce: 'post',
    generateBundle(_options, bundle) {
      const hash = createHash('sha256');
      const files: string[] = [];
      for (const [name, file] of Object.entries(bundle).sort(([a], [b]) => (a < b ? -1 : 1))) {
        files.push(name);
        hash.update(name).update(file.type === 'chunk' ? file.code : file.source);
      }
      const template = readFileSync(new URL('serviceWorker.js', import.meta.url), 'utf8');
      const source = template
        .replace("'VERSION'", JSON.stringify(hash.digest('hex').slice(0, 16)))
        .replace("['FILES']", JSON.stringify(['./', ...files.filter((name) => name !== 'index.html')]));
      this.emitFile({ type: 'asset', fileName: 'serviceWorker.js', source });
    },
  };
}
