import { toJsonSchema } from '@valibot/to-json-schema';
import { recordSchema } from '../src/commissioning/index.js';

/** The JSON Schema of `beamkeep-record/1`, drawn from the checks of the library; a test compares it with the file. */
export const recordSchemaText = (): string =>
  `${JSON.stringify(
    {
      title: 'beamkeep-record/1',
      description: 'Commissioning record of optical beam smoke detectors. See formats-commissioning.md.',
      ...toJsonSchema(recordSchema, { errorMode: 'ignore', target: 'draft-2020-12' }),
    },
    null,
    2,
  )}\n`;
