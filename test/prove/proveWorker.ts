/** One of the workers of `npm run prove`: takes pieces until none comes. */
import { parentPort } from 'node:worker_threads';
import { done, type Piece } from './work.ts';

parentPort?.on('message', async (piece: Piece) => parentPort?.postMessage(await done(piece)));
