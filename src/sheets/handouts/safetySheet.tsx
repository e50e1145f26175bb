/** The safety briefing, read aloud before anybody touches anything. */
import { mm, pt } from '../../paper/measures.ts';
import { Heading, Para, TickList } from '../parts/blocks.tsx';
import { type ClassSheet, classSide } from './classSheet.tsx';
import { handoutWords } from './handout.ts';

/** What pupils never do, and what everybody does. */
const never = ['mains', 'cutting', 'chemicals', 'lifting', 'water', 'drinking'] as const;
const always = ['hands', 'cuts', 'spills', 'tell', 'fish'] as const;

/** Read standing, with the sheet in one hand. */
const aloud = pt(16);
const heading = pt(18);

export const safetySheet: ClassSheet = {
  id: 'safety',
  fits: () => 'yes',
  pages: async function* (input, layOut) {
    const group = input.session.level === 'adults' ? 'adults' : 'pupils';
    const say = (key: string) => handoutWords(input, `safety.${key}`);
    yield layOut(
      classSide(
        input,
        { kind: handoutWords(input, 'kinds.safety'), subject: say('subject') },
        <div style={{ display: 'flex', flexDirection: 'column', rowGap: mm(6) }}>
          <div style={{ display: 'flex', flexDirection: 'column' }}>
            <Heading level="H2" text={say(`${group}.never`)} fontSize={heading} />
            <TickList items={never.map((key) => say(`${group}.${key}`))} fontSize={aloud} />
          </div>
          <div style={{ display: 'flex', flexDirection: 'column' }}>
            <Heading level="H2" text={say('always')} fontSize={heading} />
            <TickList items={always.map((key) => say(key))} fontSize={aloud} />
          </div>
          <Para text={say('emergency')} heavy="heavy" fontSize={aloud} />
          <Para text={say('read')} fontSize={aloud} />
        </div>,
      ),
    );
  },
};
