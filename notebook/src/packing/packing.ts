import { expose } from 'comlink';
import { openedFile } from './opened.js';
import { packedPiece } from './pieces.js';

/*
 * What is heavy about a sheet file, in workers: the page hands over files and gets files back, never their text.
 */

const packing = { packedPiece, openedFile };

/** What the page sees of it. */
export type Packing = typeof packing;

expose(packing);
