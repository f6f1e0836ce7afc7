import { readFileSync, writeFileSync } from 'node:fs';
import { redrawn } from './drawing.js';
import { sourceFiles } from './imports.js';

// `npm run draw`: draws the rooms into DEVELOPERS.md as the imports are. Runs at the root of the project.
const page = readFileSync('DEVELOPERS.md', 'utf8');
writeFileSync('DEVELOPERS.md', redrawn(page, sourceFiles('packages/beamkeep/src')));
