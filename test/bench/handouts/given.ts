/** The floor where the layout is given: `given.ts given COUNT FOLDER` writes pages that were laid out beforehand. */
import { join } from 'node:path';
import { nodeParts } from '../../../src/paper/node.ts';
import { pdfFile } from '../../../src/paper/pdfFile.ts';
import { toStackPdf } from '../../../src/paper/toStackPdf.ts';
import { aboutStack } from './aboutStack.ts';
import { givenSets } from './givenPages.ts';
import { tell, written } from './told.ts';

const [, , folder = '.'] = process.argv.slice(2);
const { types, deflate } = await nodeParts();
const stack = { ...aboutStack, sets: givenSets(folder, types) };
tell(await written(join(folder, 'given.pdf'), toStackPdf(stack, types, pdfFile(deflate))));
