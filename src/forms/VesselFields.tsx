/** @jsxImportSource preact */
import { NumberField } from './fields.tsx';
import { MeasuredPart } from './MeasuredPart.tsx';
import { vesselLines } from './measureLines.ts';

/** The fish tank, or the sump. */
export function VesselFields({ name }: { readonly name: 'tank' | 'sump' }) {
  return (
    <MeasuredPart place={[name]} lines={vesselLines}>
      {(letters) => (
        <>
          <NumberField place={[name, 'full_mm']} letter={letters['full_mm']} />
          <NumberField place={[name, 'above_mm']} letter={letters['above_mm']} need="optional" />
          <NumberField place={[name, 'count']} need="optional" />
        </>
      )}
    </MeasuredPart>
  );
}
