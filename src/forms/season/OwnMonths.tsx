/** @jsxImportSource preact */
import { CheckBox } from '../CheckBox.tsx';
import { anyTyped, textAt, withTree } from '../draft.ts';
import { treeOf } from '../draftOf.ts';
import { NumberField, TextField } from '../fields.tsx';
import { idOf } from '../form.ts';
import { monthsOf } from '../../schemas/climateMonths.ts';
import { MonthTable } from './MonthTable.tsx';
import { useSeason } from './seasonContext.ts';
import type { SeasonDraft } from './seasonDraft.ts';
import { formWords } from '../words.ts';

/** Temperatures of the person's own, which begin as those of the climate that was chosen. */
export function OwnMonths() {
  const season = useSeason();
  const { draft, content, change } = season;
  const { climates } = content;
  const key = textAt(draft, ['climate']);
  const climate = Object.hasOwn(climates, key) ? climates[key] : undefined;
  const filled = (next: SeasonDraft): SeasonDraft => {
    if (climate === undefined) return next;
    const { latitude, name } = climate;
    const own = { name: formWords(season, 'ownName', { name }), latitude, ...monthsOf(climate) };
    return withTree(next, ['own'], treeOf(own, '', season.units));
  };
  const set = (is: 'yes' | 'no') => {
    const next: SeasonDraft = { ...draft, own: is === 'yes' ? 'there' : 'leftOut' };
    change(is === 'no' || anyTyped(draft, ['own']) ? next : filled(next));
  };
  return (
    <>
      <CheckBox text={formWords(season, 'own')} checked={draft.own === 'there' ? 'yes' : 'no'} set={set} />
      {draft.own === 'leftOut' ? null : (
        <fieldset class="inner" id={idOf(['own'])} tabIndex={-1}>
          <legend>{formWords(season, 'groups.own')}</legend>
          <p class="how">{formWords(season, 'intro.own')}</p>
          {climate === undefined ? null : (
            <button type="button" class="plain" onClick={() => change(filled(draft))}>
              {formWords(season, 'fillIn', { name: climate.name })}
            </button>
          )}
          <TextField place={['own', 'name']} />
          <NumberField place={['own', 'latitude']} />
          <MonthTable
            words="own"
            columns={[
              ['own', 'mean_degC'],
              ['own', 'night_degC'],
            ]}
          />
        </fieldset>
      )}
    </>
  );
}
