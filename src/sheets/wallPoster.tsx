/** The wall poster: on one large page, and in tiles of the system's own paper. */
import { onPaper } from '../paper/enlarge.ts';
import { wallSizes } from '../paper/measures.ts';
import type { Page } from '../paper/page.ts';
import { posterPage } from './posterPage.tsx';
import { posterTiles } from './posterTiles.tsx';
import { poster } from './posterWords.ts';
import type { PaperName, SheetInput } from './sheet.ts';
import type { LayOut, SheetKind, WallSize } from './sheetKind.ts';

/** Who prints on A4 has posters of ISO sizes printed; who prints on Letter, of its doubles. */
const sizesFor: Readonly<Record<PaperName, readonly WallSize[]>> = {
  A4: ['A3', 'A2', 'A1'],
  Letter: ['11x17', '17x22', '22x34'],
};

function wallPoster(size: WallSize): SheetKind {
  return {
    ...common(size),
    id: `wall-poster-${size}`,
    name: (input) => poster(input, 'kind', { size: shown(size) }),
    subject: (input) => poster(input, 'pdfSubject'),
    pages: (input, layOut) => onePage(input, size, layOut),
  };
}

function tiledPoster(size: WallSize): SheetKind {
  return {
    ...common(size),
    id: `wall-poster-${size}-tiles`,
    name: (input) => poster(input, 'kindTiles', { size: shown(size) }),
    subject: (input) => poster(input, 'pdfSubjectTiles'),
    pages: async function* (input, layOut) {
      yield* posterTiles(input, await posterOf(input, size, layOut), layOut);
    },
    pictures: 'none',
  };
}

/** One picture of the poster is enough, that of the smallest size: a picture has no size of its own. */
function common(size: WallSize): Pick<SheetKind, 'title' | 'fits' | 'scale' | 'pictures'> {
  return {
    title: (input) => poster(input, 'title', { name: input.system.name }),
    fits: (input) => (sizesFor[input.paper].includes(size) ? 'yes' : 'no'),
    scale: 'true',
    ...(Object.values(sizesFor).some(([smallest]) => smallest === size) ? {} : { pictures: 'none' }),
  };
}

async function* onePage(input: SheetInput, size: WallSize, layOut: LayOut): AsyncGenerator<Page, void, void> {
  yield await posterOf(input, size, layOut);
}

async function posterOf(input: SheetInput, size: WallSize, layOut: LayOut): Promise<Page> {
  return onPaper(await posterPage(input, layOut), wallSizes[size]);
}

/** "11 × 17 in" for sizes that are told in inches. */
function shown(size: WallSize): string {
  return size.includes('x') ? `${size.replace('x', ' × ')} in` : size;
}

export const wallPosters: readonly SheetKind[] = Object.values(sizesFor)
  .flat()
  .flatMap((size) => [wallPoster(size), tiledPoster(size)]);
