/** Whoever draws for the crops page, called for before the page itself is there: it has most to load. */

export const drawer = new Worker(new URL('./season.worker.ts', import.meta.url), { type: 'module' });

let trouble: string | undefined;
let hear = (message: string): void => {
  trouble = message;
};
drawer.onerror = ({ message }) => hear(message);

/** Also what went wrong before anybody listened. */
export function onTrouble(next: (message: string) => void): void {
  hear = next;
  if (trouble !== undefined) next(trouble);
}
