/** The words of the keeper's side: readings, weighing, doubts, and the worked steps of every figure. */
import type { Figure } from '../core/plan/figure.ts';
import { say } from '../wording/catalogue.ts';
import { figureName, figureValue } from '../wording/figure.ts';
import { noteSentence } from '../wording/note.ts';
import { amount, range } from '../wording/quantity.ts';
import { stepLine } from '../wording/step.ts';
import { card, figureOf, shown, shownRange } from './cardWords.ts';
import { isUnderOne } from './emergencyWords.ts';
import type { Reading } from './parts/ReadingsTable.tsx';
import type { StepWords } from './parts/StepList.tsx';
import type { SheetInput } from './sheet.ts';

/** A quarter is only named where the plan does not know better: tank and tap may differ too much for it. */
export function changeText(input: SheetInput): string {
  const words = { quarter: shown(input, 'waterChange_L'), tenth: shown(input, 'smallChange_L') };
  if (!changeIsLimited(input)) return card(input, 'keeper.changeText', words);
  return card(input, 'keeper.changeLimited', { largest: shown(input, 'largestChange_L') });
}

/** Fish planned and fish counted. */
export function fishCount(input: SheetInput): string {
  const present = String(input.system.fish?.present ?? 0);
  const planned = figureOf(input, 'fishPlanned');
  if (planned === null) return card(input, 'keeper.fishCountNone', { present });
  return card(input, 'keeper.fishCount', { planned: String(planned.value), present });
}

/** What to test and where it is good; empty without fish. */
export function readings(input: SheetInput): readonly Reading[] {
  if (input.system.fish === null) return [];
  const one = (key: string, good: string, from: string): Reading => ({
    name: card(input, `keeper.${key}`),
    good,
    act: card(input, `keeper.${key}Act`),
    marks: marks(from, input),
  });
  const upTo = (key: string): string => card(input, 'keeper.upTo', { value: shown(input, key) });
  return [
    one('ammonia', upTo('tanMax_mg_L'), 'tanMax_mg_L'),
    one('nitrite', upTo('nitriteMax_mg_L'), 'nitriteMax_mg_L'),
    one('nitrate', upTo('nitrateMax_mg_L'), 'nitrateMax_mg_L'),
    one('pH', shownRange(input, 'pHMin', 'pHMax'), 'pHMin'),
    one('oxygen', card(input, 'keeper.atLeast', { value: shown(input, 'oxygenMin_mg_L') }), 'oxygenMin_mg_L'),
    one('temperature', shownRange(input, 'goodFrom_degC', 'goodTo_degC'), 'goodFrom_degC'),
  ];
}

/** Feed for the fish present at other masses; empty where no published ration fits. */
export function weighing(input: SheetInput): readonly { readonly mass: string; readonly feed: string }[] {
  const table = input.plan.tables.find((one) => one.key === 'feedByMass');
  const to = say(input.words.catalogue, 'words.to');
  return (table?.rows ?? []).map(([mass, low, high]) => ({
    mass: amount(Number(mass), 'g', 'nearest', input.units),
    feed: range({ low: Number(low), high: Number(high) }, 'g_d', 'down', input.units, to),
  }));
}

/** Cautions and stops of the plan as sentences, stops first, each once; those of the time in hand stand beside it. */
export function doubts(input: SheetInput): readonly string[] {
  const onThisCard = Object.values(input.plan.figures).filter(
    (one) => mayStand(one) && one.key !== 'timeInHand_min',
  );
  const notes = onThisCard.flatMap((figure) => figure.notes);
  const order = ['stop', 'caution'] as const;
  const sentences = order.flatMap((level) =>
    notes
      .filter((note) => note.level === level)
      .map((note) => noteSentence(note, input.words.catalogue, input.units)),
  );
  return [...new Set(sentences)];
}

/** Sources in the order of their first use on the card; the numbers in brackets count them. */
function sourceOrder(input: SheetInput): readonly string[] {
  const onThisCard = Object.values(input.plan.figures).filter((figure) => isOnCard(figure, input));
  return [...new Set(onThisCard.flatMap((figure) => figure.sources))];
}

/** Only what this card prints, and what those figures rest on. The whole plan is the terminal's and the pages' to show. */
const onCard = new Set([
  'wetMedia_L',
  'tankFull_L',
  'sumpFull_L',
  'waterMoved_L',
  'tankLow_L',
  'sumpLow_L',
  'blockedReturn_L',
  'systemWater_L',
  'fishByBed',
  'fishByTank',
  'fishByDensity',
  'fishPlanned',
  'feed_g_d',
  'feedSpoons',
  'topUpLimit_L_d',
  'waterChange_L',
  'smallChange_L',
  'largestChange_L',
  'tanMax_mg_L',
  'timeInHand_min',
]);

/** Figures that stand on the card only as a reading, or only when they warn. */
const besides = new Set([
  'waterHeld_L',
  'dryLayer_mm',
  'overLip_mm',
  'tankLow_mm',
  'sumpLow_mm',
  'drawdown_mm',
  'tankWanted_L',
  'afterPowerCut_L',
  'freeboard_mm',
  'intakeCover_mm',
  'fishNeed_L',
  'fishPresent',
  'fishMass_kg',
  'ration_frac',
  'aliveFrom_degC',
  'noFeedBelow_degC',
  'goodFrom_degC',
  'goodTo_degC',
  'callAbove_degC',
  'aliveTo_degC',
  'nitriteMax_mg_L',
  'nitrateMax_mg_L',
  'oxygenMin_mg_L',
  'pHMin',
  'pHMax',
]);

/** Whether tank and tap differ so much that the plan allows less than the usual change of a quarter. */
function changeIsLimited(input: SheetInput): boolean {
  const largest = figureOf(input, 'largestChange_L');
  const quarter = figureOf(input, 'waterChange_L');
  return largest !== null && quarter !== null && largest.value < quarter.value;
}

/** Of the water changes, the ones that the card names. */
function isOtherChange(key: string, input: SheetInput): boolean {
  const limited = changeIsLimited(input);
  return limited ? key === 'waterChange_L' || key === 'smallChange_L' : key === 'largestChange_L';
}

/** Whether the card speaks of this figure at all; everything else is for the plan and for other sheets. */
function mayStand(figure: Figure): boolean {
  const key = figure.key.replace(/^bed\d+\./, '');
  return onCard.has(key) || besides.has(key);
}

/** The steps behind the figures and warnings of the card. */
export function cardSteps(input: SheetInput): readonly StepWords[] {
  return Object.values(input.plan.figures)
    .filter((figure) => isWorked(figure) && isOnCard(figure, input))
    .map((figure) => stepWords(figure, input));
}

function isOnCard(figure: Figure, input: SheetInput): boolean {
  // A single bed's own figures say the same as the sums over all beds.
  const said =
    input.system.beds.length === 1 && (figure.key === 'wetMedia_L' || figure.key === 'waterMoved_L');
  const printed = onCard.has(figure.key.replace(/^bed\d+\./, '')) || !isWorked(figure);
  // Less than a minute is told in words, without a figure.
  const isNoFigure = figure.key === 'timeInHand_min' && isUnderOne(figure.value ?? 1, input);
  if (said || isNoFigure || isOtherChange(figure.key, input)) return false;
  return mayStand(figure) && (printed || figure.notes.some((note) => note.level !== 'info'));
}

function isWorked(figure: Figure): boolean {
  return figure.steps.some((step) => step.formula !== '');
}

function stepWords(figure: Figure, input: SheetInput): StepWords {
  return {
    name: figureName(figure.key, input.system.beds.length, input.words.catalogue),
    result: figureValue(figure, input.words.catalogue, input.units),
    lines: figure.steps
      .filter((step) => step.formula !== '' && !isLeftToPlan(step.gives.term))
      .map((step) => stepLine(step, input.words.catalogue, input.words.terms)),
    sources: marks(figure.key, input),
  };
}

/** Where a leaning wall meets the water is measured with a tape, and what fish breathe takes no pencil: the plan shows both. */
function isLeftToPlan(term: string): boolean {
  return term.startsWith('surface') || ['startingOxygen', 'breathing', 'fishOxygen'].includes(term);
}

/** The numbers in brackets that point from a figure to its sources. */
function marks(key: string, input: SheetInput): string {
  const order = sourceOrder(input);
  const sources = input.plan.figures[key]?.sources ?? [];
  return sources.map((source) => `[${order.indexOf(source) + 1}]`).join('');
}

/** Short citations in one line of text, counted as the marks count them; the site has them in full. */
export function citations(input: SheetInput): string {
  return sourceOrder(input)
    .map((key, i) => `[${i + 1}] ${input.words.sources[key]?.short ?? key}`)
    .join(' · ');
}
