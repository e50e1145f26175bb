/** The head of a sheet that is handed out, and whose it is. */
import { dayText } from '../../wording/date.ts';
import { CardHead } from '../parts/CardHead.tsx';
import { type HandoutInput, handoutWords } from './handout.ts';
import { Whose } from './Whose.tsx';

type Props = { readonly input: HandoutInput; readonly kind: string; readonly subject: string };

export function HandoutHead({ input, kind, subject }: Props) {
  const { session, words } = input;
  return (
    <>
      <CardHead
        name={session.name}
        place={session.place === '' ? null : session.place}
        subject={subject}
        kind={handoutWords(input, `kinds.${kind}`)}
        printed={dayText(session.date, words.catalogue)}
      />
      <Whose input={input} />
    </>
  );
}
