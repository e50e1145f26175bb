/**
 * The parts of a system that can be read although others cannot, so that checks across fields run even while
 * some field elsewhere is still wrong: everything is told at once.
 */
import type * as z from 'zod';
import { type BedFile, bedFile } from './bed.ts';
import { valueAt } from './schemaAt.ts';
import { fishStockFile, pumpFile, type SystemFile, type VesselFile, vesselFile } from './systemFile.ts';

export type Parts = {
  readonly raw: unknown;
  /** null where it is missing or wrong in itself. */
  readonly tank: VesselFile | null;
  readonly sump: VesselFile | null;
  readonly beds: readonly (BedFile | null)[];
  readonly pump: z.output<typeof pumpFile> | null;
  readonly fish: z.output<typeof fishStockFile> | null;
  /** Whether the person wrote them at all. */
  readonly has: { readonly sump: boolean; readonly pump: boolean };
};

/** Without minding unknown keys: they are told by the schema, and the rest of the part is sound. */
const loose = {
  vessel: vesselFile.strip(),
  bed: bedFile.strip(),
  pump: pumpFile.strip(),
  fish: fishStockFile.strip(),
} as const;

export function partsOf(raw: unknown): Parts {
  const beds = valueAt(raw, ['beds']);
  return {
    raw,
    tank: part(loose.vessel, valueAt(raw, ['tank'])),
    sump: part(loose.vessel, valueAt(raw, ['sump'])),
    beds: Array.isArray(beds) ? beds.map((bed: unknown) => part(loose.bed, bed)) : [],
    pump: part(loose.pump, valueAt(raw, ['pump'])),
    fish: part(loose.fish, valueAt(raw, ['fish'])),
    has: { sump: valueAt(raw, ['sump']) !== undefined, pump: valueAt(raw, ['pump']) !== undefined },
  };
}

/** The same of a system that is sound as a whole. */
export function partsOfSound(raw: unknown, { tank, sump, beds, pump, fish }: SystemFile): Parts {
  return {
    ...{ raw, tank, sump: sump ?? null, beds, pump: pump ?? null, fish: fish ?? null },
    has: { sump: sump !== undefined, pump: pump !== undefined },
  };
}

function part<T extends z.ZodType>(schema: T, raw: unknown): z.output<T> | null {
  const result = schema.safeParse(raw);
  return result.success ? result.data : null;
}
