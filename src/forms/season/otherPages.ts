/**
 * When the pages of a calendar are drawn that nobody sees. On a small machine drawing them would keep the first page from
 * the screen, and the solver from its work.
 */
export type OtherPages = {
  /** Something new is drawn; better plans of it may come, or none. */
  readonly begin: (better: 'coming' | 'none') => void;
  /** No better plan comes any more. */
  readonly settle: () => void;
  /** Which page is on the screen, from 0. */
  readonly look: (index: number) => void;
  /** After a first page was told. They never wait for long, nor where somebody looks at one of them. */
  readonly mayCome: () => Promise<void>;
};

/** Until the first page is on the screen, and at most for a better plan. */
const wait_s = { first: 0.15, better: 4 };

export function otherPages(): OtherPages {
  let better: 'coming' | 'none' = 'none';
  let lookedAt = 0;
  let waitNoMore: () => void = () => undefined;
  return {
    begin: (next) => {
      better = next;
    },
    settle: () => {
      better = 'none';
      waitNoMore();
    },
    look: (index) => {
      lookedAt = index;
      if (index > 0) waitNoMore();
    },
    mayCome: () => {
      const most_s = wait_s[better === 'coming' && lookedAt === 0 ? 'better' : 'first'];
      return new Promise((resolve) => {
        waitNoMore = resolve;
        setTimeout(resolve, most_s * 1000);
      });
    },
  };
}
