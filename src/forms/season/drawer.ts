/** Whoever draws for the crops page, called for before the page itself is there: it has most to load. */

export const drawer = new Worker(new URL('./season.worker.ts', import.meta.url), { type: 'module' });

let trouble: string | undefined;
let hear = (message: string): void => {
  trouble = message;
};

/** A page waits for it no longer: where the network is slow, there is a form to fill in meanwhile. */
const patience_s = 0.4;

/**
 * Kept when it hears what it is asked, or is not to be waited for. A worker begins only while the page is not busy: one that
 * shows itself before has its first plan drawn later.
 */
export const drawerBegan = new Promise<void>((resolve) => {
  // That it hears is the first that it says, and said to nobody else.
  const began = (event: MessageEvent): void => {
    event.stopImmediatePropagation();
    resolve();
  };
  drawer.addEventListener('message', began, { once: true });
  setTimeout(resolve, patience_s * 1000);
  drawer.onerror = ({ message }) => {
    resolve();
    hear(message);
  };
});

/** Also what went wrong before anybody listened. */
export function onTrouble(next: (message: string) => void): void {
  hear = next;
  if (trouble !== undefined) next(trouble);
}
