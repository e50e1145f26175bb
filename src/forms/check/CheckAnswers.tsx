/** @jsxImportSource preact */
/** The steps of a sheet, each with a field for the answer, and what is to be said of it. */
import type { HandoutFacts } from '../../core/plan/handoutFacts.ts';
import type { AskedStep } from '../../core/workshop/askedSteps.ts';
import { stepName } from '../../core/workshop/carriedOn.ts';
import { say } from '../../wording/catalogue.ts';
import { figureName } from '../../wording/figure.ts';
import { stepParts } from '../../wording/step.ts';
import type { CheckContent } from './checkContent.ts';
import { type Verdict, verdictsOf } from './checkWork.ts';
import { verdictText } from './verdictText.ts';

type Props = {
  readonly content: CheckContent;
  readonly facts: HandoutFacts;
  /** What was typed, by the field's name. */
  readonly typed: Readonly<Record<string, string>>;
  readonly type: (name: string, text: string) => void;
};

export function CheckAnswers({ content, facts, typed, type }: Props) {
  const { catalogue } = content;
  // What the sheet gives is nobody's answer.
  const asked = facts.asked.flatMap(({ key, steps }) => {
    const own = steps.filter(({ way }) => way !== 'given');
    return own.length === 0 ? [] : [{ key, steps: own }];
  });
  const verdicts = verdictsOf(facts.asked, typed);
  return (
    <section aria-labelledby="check-answers">
      <h2 id="check-answers">{say(catalogue, 'check.answers')}</h2>
      <p>{say(catalogue, 'check.answersHow')}</p>
      <ol class="work-list">
        {asked.map(({ key, steps }) => (
          <li key={key}>
            <fieldset>
              <legend>{figureName(key, facts.system.beds.length, catalogue)}</legend>
              {steps.map((step, at) => {
                const name = stepName(key, step);
                return (
                  <Answer
                    key={name}
                    {...{ content, step, name, type }}
                    at={at + 1 === steps.length ? 'last' : 'inside'}
                    text={typed[name] ?? ''}
                    verdict={verdicts.get(name) ?? 'empty'}
                  />
                );
              })}
            </fieldset>
          </li>
        ))}
      </ol>
    </section>
  );
}

type AnswerProps = Pick<Props, 'content' | 'type'> & {
  readonly step: AskedStep;
  readonly name: string;
  /** The last one gives what the task is called, as on the sheet. */
  readonly at: 'inside' | 'last';
  readonly text: string;
  readonly verdict: Verdict;
};

function Answer({ content, step, name, at, text, verdict, type }: AnswerProps) {
  const { catalogue, terms } = content;
  const { unit } = stepParts(step, catalogue, terms).result;
  const own = terms[step.gives.term]?.name ?? step.gives.term;
  const what = at === 'last' ? say(catalogue, 'check.last') : own;
  const id = `check-${name.replaceAll('.', '-')}`;
  return (
    <div class="field">
      <label for={id}>{unit === '' ? what : say(catalogue, 'check.inUnit', { what, unit })}</label>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autoComplete="off"
        value={text}
        aria-describedby={`${id}-told`}
        onInput={({ currentTarget: { value } }) => type(name, value)}
      />
      <p class={`verdict ${verdict}`} id={`${id}-told`} role="status">
        {verdictText(verdict, step, content)}
      </p>
    </div>
  );
}
