/**
 * `npm run bench`: how long plan, layout and prints take; `npm run bench -- handouts [--peers]`: stacks of
 * handouts; `npm run bench -- class`: the same for an evening class in a browser; `npm run bench -- season`: the crop
 * turnover planner.
 */
export {};
if (process.argv.includes('handouts')) await import('./handouts/run.ts');
else if (process.argv.includes('class')) await import('./class.ts');
else if (process.argv.includes('season')) await import('./season/run.ts');
else await import('../../src/terminal/bench.ts');
