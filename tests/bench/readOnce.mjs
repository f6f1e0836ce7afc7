// Reads a log into traces, or row by row: what is measured.  node readOnce.mjs LOG SITE traces|rows

import { readRows, readTraces } from '../../packages/beamkeep/dist/log/index.js';
import { logFiles, siteFile } from '../../packages/beamkeep/dist/node.js';

const [log, site, how] = process.argv.slice(2);
const sources = await logFiles([log]);
if (how === 'traces') await readTraces(sources, await siteFile(site));
else await readRows(sources, await siteFile(site), { header() {}, rows() {}, end() {} });
