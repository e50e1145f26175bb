/** How much of a list goes on a page, found by trying: the press is the only one who knows. */

type Tried = { readonly fits: 'yes' | 'no' };

/**
 * The try with the most things that still fits. All of them is tried first, since that is the usual case; then the
 * range is halved. The least is given even if it does not fit, so that whoever prints it can say so.
 */
export async function mostThatFit<T extends Tried>(
  all: number,
  least: number,
  attempt: (count: number) => Promise<T>,
): Promise<T> {
  const whole = await attempt(all);
  if (whole.fits === 'yes' || all <= least) return whole;
  let best = await attempt(least);
  let low = least;
  let high = all;
  while (best.fits === 'yes' && high - low > 1) {
    const middle = Math.floor((low + high) / 2);
    const tried = await attempt(middle);
    if (tried.fits === 'yes') {
      best = tried;
      low = middle;
    } else high = middle;
  }
  return best;
}
