// Writes docs/record.schema.json:
//   node packages/beamkeep/scripts/run.mjs packages/beamkeep/scripts/write-record-schema.ts
import { writeFileSync } from 'node:fs';
import { recordSchemaText } from './recordSchemaText.js';

writeFileSync('packages/beamkeep/docs/record.schema.json', recordSchemaText());
