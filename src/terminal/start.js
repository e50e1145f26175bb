// Starts a program of ours: `node src/terminal/start.js src/terminal/handouts.ts ...`. It says first which Node is
// needed, so nothing newer than that may stand here.
import './needNode.js';

const [, , source] = process.argv;
const { compiled } = await import('./compiled.js');
const program = await compiled(source);
process.argv.splice(1, 2, source);
await import(program);
