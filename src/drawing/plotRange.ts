/** Which values a graph to draw by hand runs through: a little beyond what is good, in round steps. */

type Wanted = {
  readonly goodFrom: number | null;
  readonly goodTo: number | null;
  /** Ends where the plan knows them: what the fish live through. */
  readonly low: number | null;
  readonly high: number | null;
};

export type PlotRange = { readonly low: number; readonly high: number; readonly step: number };

const mostParts = 6;
const rounds = [0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100] as const;

/** Ends of the scale. Readings that only have a most begin at nothing and run to twice it. */
export function plotRange(wanted: Wanted): PlotRange {
  const from = wanted.goodFrom ?? 0;
  const to = wanted.goodTo ?? from + 1;
  const beyond = (to - from) / 2;
  const low = wanted.low ?? (wanted.goodFrom === null ? 0 : from - beyond);
  const high = wanted.high ?? (wanted.goodFrom === null ? 2 * to : to + beyond);
  const step = rounds.find((one) => Math.ceil(high / one) - Math.floor(low / one) <= mostParts) ?? high - low;
  return { low: Math.floor(low / step) * step, high: Math.ceil(high / step) * step, step };
}
