/** The people of the bench: six shapes of containers with measures of their own, names in twelve scripts, one name in ten that takes two lines. */
import { classFacts, handoutFacts } from '../../../src/core/plan/handoutFacts.ts';
import type { Press } from '../../../src/paper/press.ts';
import type { StackSet } from '../../../src/paper/toStackPdf.ts';
import { readContainers } from '../../../src/schemas/containersText.ts';
import { peopleOf } from '../../../src/schemas/people.ts';
import { readContent } from '../../../src/schemas/readContent.ts';
import { keptFor } from '../../../src/terminal/kept.ts';
import type { RosterRow } from '../../../src/schemas/readRoster.ts';
import { workshopFile } from '../../../src/schemas/workshopFile.ts';
import { classDesk } from '../../../src/sheets/handouts/classDesk.ts';
import { scriptNames } from '../../paper/scriptNames.ts';

/** A shape of containers, each time with other measures; the first shape is an exercise. */
const cellsOf = (time: number): readonly string[] => [
  '',
  `tank box ${100 + (time % 23)} x 90 x 80 cm + bed box 100 x ${60 + (time % 17)} x 30 cm`,
  `tank drum ${105 + (time % 13)} x 80 cm + bed box 90 x 60 x ${30 + (time % 7)} cm`,
  `tank trough ${180 + (time % 29)} x 90 x 60 cm + bed box 100 x ${60 + (time % 11)} x 30 cm`,
  `tank oval 150 x ${100 + (time % 19)} x 70 cm + bed drum ${80 + (time % 5)} x 30 cm`,
  `tank box ${100 + (time % 17)} x 100 x 80 cm + bed lying drum 58 x ${88 + (time % 9)} x 29 cm`,
];
const shapes = cellsOf(0).length;
const long = ' of the house behind the old mill, by the far pond, at the end of the lane';

function rowOf(at: number): RosterRow {
  const cell = cellsOf(Math.floor(at / shapes))[at % shapes] ?? '';
  const read = cell === '' ? null : readContainers(cell, []);
  if (read !== null && 'problems' in read) throw new Error(JSON.stringify(read.problems));
  const [first = ''] = (scriptNames[at % scriptNames.length]?.name ?? '').split(' ');
  const name = `${first} ${at + 1}${at % 10 === 9 ? long : ''}`;
  return { line: at + 2, name, team: `Team ${at % 90}`, containers: read, notes: '' };
}

/** A worksheet and its answers for so many people; a plan to take home too, where that is wanted. */
export async function handoutSets(
  press: Press,
  count: number,
  plans: 'with' | 'without' = 'without',
): Promise<AsyncGenerator<StackSet, void, void>> {
  const { handbook, layouts } = keptFor('content');
  const { content } = await readContent('content', { shelf: handbook, without: ['turnovers'] });
  const [demo] = content.workshops;
  if (demo === undefined) throw new Error('the bench needs a workshop in content');
  const raw = workshopFile.parse({ ...demo.raw, sheets: ['worksheet', 'key'] });
  const rows = Array.from({ length: count }, (_, at) => rowOf(at));
  const { people } = peopleOf(raw, rows, { ...content, bedName: 'Bed' }, () => undefined);
  const { terms, sources } = content;
  const words = { catalogue: content.wording['en'] ?? {}, terms, sources };
  const job = { words, day: '2031-05-04', core: { classFacts, handoutFacts }, layouts };
  const desk = classDesk({ ...demo, raw, people }, job, press);
  async function* sets(): AsyncGenerator<StackSet, void, void> {
    for (const [at, person] of people.entries()) {
      const input = desk.handoutOf(at);
      const pages = [...(await desk.handouts(input, 'blank')), ...(await desk.handouts(input, 'key'))];
      if (plans === 'with') pages.push(...(await desk.plans(input)));
      yield { title: person.name, pages };
    }
  }
  return sets();
}
