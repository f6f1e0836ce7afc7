import manifest from '../package.json' with { type: 'json' };

/** Of this command, as its package says. */
export const { version } = manifest;
