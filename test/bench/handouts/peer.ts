/** One of the others: `peer.ts KIND COUNT FOLDER` draws what was laid out beforehand, and loads nothing of ours. */
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { peers } from './peers.ts';
import { tell } from './told.ts';

const [kind = '', , folder = '.'] = process.argv.slice(2);
const peer = peers[kind];
if (peer === undefined) throw new RangeError(`there is no peer ${kind}`);
const bytes = await peer(JSON.parse(readFileSync(join(folder, 'plain.json'), 'utf8')), folder);
writeFileSync(join(folder, `${kind}.pdf`), bytes);
tell(bytes.length);
