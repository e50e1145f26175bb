/** `npm run bench`: how long plan, layout and prints take; `npm run bench -- handouts [--peers]`: stacks of handouts. */
export {};
if (process.argv.includes('handouts')) await import('./handouts/run.ts');
else await import('../../src/terminal/bench.ts');
