/** The machine code of the solver, for a page to hand to its workers. */
import solverUrl from 'highs/runtime?url';

export async function compiledSolver(): Promise<WebAssembly.Module> {
  const answer = await fetch(solverUrl);
  if (!answer.ok) throw new Error(`The solver did not load: ${solverUrl} (${answer.status}).`);
  return WebAssembly.compile(await answer.arrayBuffer());
}
