/** Something that is loaded once, when it is first asked for. What did not load is asked for again next time. */
export function loaded<Thing>(load: () => Promise<Thing>): () => Promise<Thing> {
  let thing: Promise<Thing> | undefined;
  return () => {
    thing ??= load();
    thing.catch(() => {
      thing = undefined;
    });
    return thing;
  };
}
