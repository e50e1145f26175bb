/** @jsxImportSource preact */
import type { BedMode } from '../core/system.ts';
import { say } from '../wording/catalogue.ts';
import { textAt } from './draft.ts';
import { ChoiceField, NumberField, TextField } from './fields.tsx';
import { useForm } from './form.ts';
import { MeasuredPart } from './MeasuredPart.tsx';
import { bedLines } from './measureLines.ts';
import { OptionalGroup } from './OptionalGroup.tsx';

const modes: readonly BedMode[] = ['siphon', 'timer', 'constantFlood', 'inTank'];

/** Levels that a basket in the tank does not have of its own. */
const ofPumpedBeds = new Set(['waterLine_mm', 'drained_mm']);

export function BedFields({ index }: { readonly index: number }) {
  const { content, draft } = useForm();
  const place = ['beds', index] as const;
  const inTank = textAt(draft, [...place, 'mode']) === 'inTank';
  const lines = inTank ? bedLines.filter(({ key }) => !ofPumpedBeds.has(key)) : bedLines;
  const media = Object.entries(content.facts.media).map(([value, { name }]) => ({ value, text: name }));
  const ways = modes.map((value) => ({ value, text: say(content.catalogue, `modes.${value}`) }));
  return (
    <>
      <TextField place={[...place, 'name']} />
      <ChoiceField place={[...place, 'mode']} choices={ways} />
      <ChoiceField place={[...place, 'media']} choices={media} />
      <MediaNote media={textAt(draft, [...place, 'media'])} />
      <MeasuredPart place={place} lines={lines}>
        {(letters) => (
          <>
            <NumberField place={[...place, 'mediaDepth_mm']} letter={letters['mediaDepth_mm']} />
            {inTank ? null : <LineFields index={index} letters={letters} />}
            <NumberField
              place={[...place, 'above_mm']}
              letter={letters['above_mm']}
              variant={inTank ? 'inTank' : undefined}
            />
            <NumberField place={[...place, 'count']} need="optional" />
          </>
        )}
      </MeasuredPart>
      <BucketTest index={index} />
    </>
  );
}

type LineProps = { readonly index: number; readonly letters: Readonly<Record<string, string>> };

function LineFields({ index, letters }: LineProps) {
  const { draft } = useForm();
  const place = ['beds', index] as const;
  const hole = [...place, 'drainHole_mm'] as const;
  const onTimer = textAt(draft, [...place, 'mode']) === 'timer';
  return (
    <>
      <NumberField place={[...place, 'waterLine_mm']} letter={letters['waterLine_mm']} />
      <NumberField place={[...place, 'drained_mm']} letter={letters['drained_mm']} need="optional" />
      <NumberField place={[...place, 'standpipeBore_mm']} need="optional" />
      {onTimer || textAt(draft, hole) !== '' ? <NumberField place={hole} need="optional" /> : null}
    </>
  );
}

/** What to know of the media before using it. */
function MediaNote({ media }: { readonly media: string }) {
  const { content } = useForm();
  const { note } = Object.hasOwn(content.facts.media, media) ? (content.facts.media[media] ?? {}) : {};
  return note === undefined ? null : <p class="note">{note}</p>;
}

function BucketTest({ index }: { readonly index: number }) {
  const place = ['beds', index, 'bucketTest'] as const;
  return (
    <OptionalGroup place={place} name="bucketTest">
      <NumberField place={[...place, 'media_L']} />
      <NumberField place={[...place, 'water_L']} />
    </OptionalGroup>
  );
}
