/**
 * The same random systems on every run, so that a red run is about the change and not about luck: `npm run prove` looks for luck.
 * `FC_SEED=random npm test` draws others; a failure prints its seed, to be given here again.
 */
import fc from 'fast-check';

const asked = process.env['FC_SEED'];
if (asked !== 'random') fc.configureGlobal({ ...fc.readConfigureGlobal(), seed: Number(asked ?? 20310504) });
