/** The tank care card: front for whoever is there today, back for the keeper, then the worked steps. */
import type { JSXNode } from 'satori/jsx';
import type { Sheet } from '../paper/layOut.ts';
import { mm, paperSizes } from '../paper/measures.ts';
import type { Page } from '../paper/page.ts';
import { dayText } from '../wording/date.ts';
import { card } from './cardWords.ts';
import { cardSteps } from './keeperWords.ts';
import { CardBack } from './parts/CardBack.tsx';
import { CardFront } from './parts/CardFront.tsx';
import { CardSteps } from './parts/CardSteps.tsx';
import { Leaf } from './parts/blocks.tsx';
import { type Filled, mostThatFit } from './mostThatFit.ts';
import type { StepWords } from './parts/StepList.tsx';
import type { SheetInput } from './sheet.ts';
import type { LayOut, SheetKind } from './sheetKind.ts';

/**
 * The sides of the card, one after the other: front, back, and more only where the steps run on. The press says what
 * fits; a sheet never measures text.
 */
export async function* careCard(input: SheetInput, layOut: LayOut): AsyncGenerator<Page, void, void> {
  yield layOut(side(input, <CardFront input={input} printed={printedOn(input)} />));
  let rest = cardSteps(input);
  let page = await fill(input, layOut, rest, 'back');
  yield page.page;
  while (page.taken < rest.length) {
    rest = rest.slice(page.taken);
    page = await fill(input, layOut, rest, 'steps');
    yield page.page;
  }
}

/** The card among the other sheets. */
export const careCardKind: SheetKind = {
  id: 'care-card',
  name: (input) => card(input, 'kind'),
  title: careCardTitle,
  subject: (input) => card(input, 'pdfSubject'),
  pages: careCard,
  fits: () => 'yes',
  scale: 'fit',
};

function careCardTitle(input: SheetInput): string {
  return card(input, 'title', { name: input.system.name });
}

/** A side with as many of the steps as it has room for. */
async function fill(
  input: SheetInput,
  layOut: LayOut,
  steps: readonly StepWords[],
  kind: 'back' | 'steps',
): Promise<Filled> {
  const printed = printedOn(input);
  const Side = kind === 'back' ? CardBack : CardSteps;
  return mostThatFit(steps.length, kind === 'back' ? 0 : 1, 'columns', async (taken) => {
    const last = taken === steps.length ? 'last' : 'more';
    return layOut(
      side(input, <Side input={input} printed={printed} steps={steps.slice(0, taken)} last={last} />),
    );
  });
}

function printedOn(input: SheetInput): string {
  return card(input, 'printed', { date: dayText(input.day, input.words.catalogue) });
}

function side(input: SheetInput, content: JSXNode): Sheet {
  return {
    ...paperSizes[input.paper],
    title: careCardTitle(input),
    lang: 'en',
    root: <Leaf height={mm(254)}>{content}</Leaf>,
  };
}
