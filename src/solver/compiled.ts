/** The machine code of the solver, for a page to hand to its workers. */
import solverUrl from 'highs/runtime?url';

export async function compiledSolver(): Promise<WebAssembly.Module> {
  try {
    const answer = await fetch(solverUrl);
    if (!answer.ok) throw new Error(`${solverUrl} (${answer.status})`);
    // Compiled while it comes, where it comes with its proper type; then the browser keeps the code for the next time.
    if (answer.headers.get('content-type') === 'application/wasm')
      return await WebAssembly.compileStreaming(answer);
    return await WebAssembly.compile(await answer.arrayBuffer());
  } catch (cause) {
    throw new Error('What makes the plan better did not load. It needs a network once.', { cause });
  }
}
