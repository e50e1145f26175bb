/// <reference types="vite/client" />
import atkinsonLatinText from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-400-normal.woff?url';
import atkinsonLatinHeavy from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-800-normal.woff?url';
import atkinsonLatinExtText from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-400-normal.woff?url';
import atkinsonLatinExtHeavy from '@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next-latin-ext-800-normal.woff?url';
import notoCyrillicText from '@fontsource/noto-sans/files/noto-sans-cyrillic-400-normal.woff?url';
import notoCyrillicHeavy from '@fontsource/noto-sans/files/noto-sans-cyrillic-800-normal.woff?url';
import notoCyrillicExtText from '@fontsource/noto-sans/files/noto-sans-cyrillic-ext-400-normal.woff?url';
import notoCyrillicExtHeavy from '@fontsource/noto-sans/files/noto-sans-cyrillic-ext-800-normal.woff?url';
import notoGreekText from '@fontsource/noto-sans/files/noto-sans-greek-400-normal.woff?url';
import notoGreekHeavy from '@fontsource/noto-sans/files/noto-sans-greek-800-normal.woff?url';
import notoGreekExtText from '@fontsource/noto-sans/files/noto-sans-greek-ext-400-normal.woff?url';
import notoGreekExtHeavy from '@fontsource/noto-sans/files/noto-sans-greek-ext-800-normal.woff?url';
import notoLatinText from '@fontsource/noto-sans/files/noto-sans-latin-400-normal.woff?url';
import notoLatinHeavy from '@fontsource/noto-sans/files/noto-sans-latin-800-normal.woff?url';
import notoLatinExtText from '@fontsource/noto-sans/files/noto-sans-latin-ext-400-normal.woff?url';
import notoLatinExtHeavy from '@fontsource/noto-sans/files/noto-sans-latin-ext-800-normal.woff?url';
import notoVietnameseText from '@fontsource/noto-sans/files/noto-sans-vietnamese-400-normal.woff?url';
import notoVietnameseHeavy from '@fontsource/noto-sans/files/noto-sans-vietnamese-800-normal.woff?url';
import openMathText from '@fontsource/open-sans/files/open-sans-math-400-normal.woff?url';
import openMathHeavy from '@fontsource/open-sans/files/open-sans-math-800-normal.woff?url';
import type { FontName } from './fonts.ts';
import type { Weight } from './page.ts';

/** Where the bundler put each font of the case. A bundler needs every file named in full. */
export const fontUrls: Readonly<Record<FontName, Readonly<Record<Weight, string>>>> = {
  'atkinson-hyperlegible-next-latin': { text: atkinsonLatinText, heavy: atkinsonLatinHeavy },
  'atkinson-hyperlegible-next-latin-ext': { text: atkinsonLatinExtText, heavy: atkinsonLatinExtHeavy },
  'noto-sans-latin': { text: notoLatinText, heavy: notoLatinHeavy },
  'noto-sans-latin-ext': { text: notoLatinExtText, heavy: notoLatinExtHeavy },
  'noto-sans-greek': { text: notoGreekText, heavy: notoGreekHeavy },
  'noto-sans-greek-ext': { text: notoGreekExtText, heavy: notoGreekExtHeavy },
  'noto-sans-cyrillic': { text: notoCyrillicText, heavy: notoCyrillicHeavy },
  'noto-sans-cyrillic-ext': { text: notoCyrillicExtText, heavy: notoCyrillicExtHeavy },
  'noto-sans-vietnamese': { text: notoVietnameseText, heavy: notoVietnameseHeavy },
  'open-sans-math': { text: openMathText, heavy: openMathHeavy },
};
