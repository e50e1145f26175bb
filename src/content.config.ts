/** The collections of the pages. `readContent` has read and checked everything; nothing is checked a second time. */
import { fileURLToPath } from 'node:url';
import type { Loader } from 'astro/loaders';
import { z } from 'astro/zod';
import { defineCollection } from 'astro:content';
import { type CarePart, careParts } from './core/care/routine.ts';
import type { Crop } from './core/crops/crop.ts';
import type { Content, ReadSystem, ReadTurnover } from './schemas/content.ts';
import type { ClimateFile } from './schemas/climate.ts';
import type { FishFile } from './schemas/fish.ts';
import type { MediaFile } from './schemas/media.ts';
import { readContent } from './schemas/readContent.ts';
import type { SourceFile } from './schemas/source.ts';
import type { StartContainerFile, StartPumpFile } from './schemas/starts.ts';
import type { TermFile } from './schemas/term.ts';
import type { WordingFile } from './schemas/wording.ts';
import { problemLine } from './wording/problem.ts';

type Entries = Readonly<Record<string, object>>;

async function read(root: URL): Promise<Content> {
  const { content, problems } = await readContent(fileURLToPath(new URL('content', root)));
  if (problems.length === 0) return content;
  throw new Error(problems.map((problem) => problemLine(problem, content.wording['en'])).join('\n'));
}

function from(pick: (content: Content) => Entries): Loader {
  return {
    name: 'bedfirst-content',
    load: async ({ store, config }) => {
      const entries = Object.entries(pick(await read(config.root)));
      store.clear();
      for (const [id, data] of entries) store.set({ id, data: { ...data } });
    },
  };
}

export const collections = {
  // What is not shared stays out of everything that pages are made of.
  systems: defineCollection({
    loader: from(({ systems }) =>
      Object.fromEntries(systems.filter(({ shared }) => shared).map((system) => [system.id, system])),
    ),
    schema: z.custom<ReadSystem>(),
  }),
  fish: defineCollection({ loader: from(({ fish }) => fish), schema: z.custom<FishFile>() }),
  climates: defineCollection({ loader: from(({ climates }) => climates), schema: z.custom<ClimateFile>() }),
  containers: defineCollection({
    loader: from(({ starts }) => starts.containers),
    schema: z.custom<StartContainerFile>(),
  }),
  pumps: defineCollection({ loader: from(({ starts }) => starts.pumps), schema: z.custom<StartPumpFile>() }),
  crops: defineCollection({ loader: from(({ crops }) => crops), schema: z.custom<Crop>() }),
  turnovers: defineCollection({
    loader: from(({ turnovers }) =>
      Object.fromEntries(turnovers.filter(({ shared }) => shared).map((season) => [season.id, season])),
    ),
    schema: z.custom<ReadTurnover>(),
  }),
  media: defineCollection({ loader: from(({ media }) => media), schema: z.custom<MediaFile>() }),
  sources: defineCollection({ loader: from(({ sources }) => sources), schema: z.custom<SourceFile>() }),
  terms: defineCollection({ loader: from(({ terms }) => terms), schema: z.custom<TermFile>() }),
  // One entry a heading, so that the tasks under it keep their order.
  care: defineCollection({
    loader: from(({ care }) =>
      Object.fromEntries(careParts(care).map((part) => [`${part.topic}-${part.rhythm}`, part])),
    ),
    schema: z.custom<CarePart>(),
  }),
  wording: defineCollection({ loader: from(({ wording }) => wording), schema: z.custom<WordingFile>() }),
};
