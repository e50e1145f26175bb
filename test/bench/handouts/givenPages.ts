/**
 * Pages whose layout is given: of the sheets all that is on them, and of every page its own words and where they stand.
 * What is left to do is to write them: glyphs, drawing commands, parts, and bytes.
 */
import { createReadStream, openSync, readFileSync, writeFileSync, writeSync } from 'node:fs';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { deserialize, serialize } from 'node:v8';
import type { Item, Words } from '../../../src/paper/page.ts';
import type { Stencil } from '../../../src/paper/stencil.ts';
import type { StackSet } from '../../../src/paper/toStackPdf.ts';
import type { TypeCase } from '../../../src/paper/typeCase.ts';

/** Words of one page: the slot's node, the line of it that they are like, and what is their own. */
type Own = readonly [
  node: number,
  line: number,
  own: Pick<Words, 'text' | 'x_pt' | 'width_pt' | 'direction'>,
];
type Given = {
  readonly title: string;
  readonly pages: readonly {
    readonly sheet: number;
    readonly packs: readonly string[];
    readonly own: readonly Own[];
  }[];
};

const files = (folder: string) => ({
  sheets: join(folder, 'sheets.bin'),
  pages: join(folder, 'pages.jsonl'),
});

/** By their nodes, the lines that stand in the slots of a sheet as samples. */
function samplesOf({ slots }: Stencil): ReadonlyMap<number, readonly Words[]> {
  return new Map([...slots.values()].flat().map(({ node, lines }) => [node, lines]));
}

/** Keeps what is given, for a process that writes it. */
export async function keepPages(sets: AsyncIterable<StackSet>, folder: string): Promise<void> {
  const sheets = new Map<Stencil, number>();
  const file = openSync(files(folder).pages, 'w');
  for await (const { title, pages } of sets) {
    const given: Given = {
      title,
      pages: pages.map(({ stencil, items, type }) => {
        sheets.set(stencil, sheets.get(stencil) ?? sheets.size);
        const samples = samplesOf(stencil);
        return {
          sheet: sheets.get(stencil) ?? 0,
          packs: type.packs,
          own: items.map((item): Own => ownOf(item, samples.get(item.node) ?? [])),
        };
      }),
    };
    writeSync(file, `${JSON.stringify(given)}\n`);
  }
  writeFileSync(files(folder).sheets, serialize([...sheets.keys()]));
}

function ownOf(item: Item, lines: readonly Words[]): Own {
  if (item.kind !== 'words') throw new Error('a drawing of its own is not kept here');
  const { node, text, x_pt, width_pt, direction } = item;
  const line = lines.findIndex(({ baseline_pt }) => baseline_pt === item.baseline_pt);
  return [node, line, { text, x_pt, width_pt, ...(direction === undefined ? {} : { direction }) }];
}

/** The sets again, one after the other. */
export async function* givenSets(folder: string, types: TypeCase): AsyncGenerator<StackSet, void, void> {
  const sheets = deserialize(readFileSync(files(folder).sheets)) as readonly Stencil[];
  const samples = sheets.map(samplesOf);
  const lines = createInterface({ input: createReadStream(files(folder).pages), crlfDelay: Infinity });
  for await (const line of lines) {
    const { title, pages } = JSON.parse(line) as Given;
    await types.read(pages);
    yield {
      title,
      pages: pages.map(({ sheet, packs, own }) => {
        const stencil = sheets[sheet];
        if (stencil === undefined) throw new Error(`there is no sheet ${sheet}`);
        const items = own.map(([node, at, words]): Item => {
          const sample = samples[sheet]?.get(node)?.[at];
          if (sample === undefined) throw new Error(`there is no line ${at} in slot ${node}`);
          return { ...sample, ...words };
        });
        return { stencil, items, type: types.typeOf({ packs }) };
      }),
    };
  }
}
