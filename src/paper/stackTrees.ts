/** The lists by which a long print is found its way in: pages, bookmarks, and the parts of every mark. */
import { PDFHexString } from 'pdf-lib';
import type { PdfFile } from './pdfFile.ts';

/** So many entries on a branch: a reader that looks for one page need not read the list of all. */
const mostOnBranch = 64;

/** The tree of pages (ISO 32000-1, 7.7.3). */
export type PageTree = {
  /** Takes a page in; gives the number of the branch that it stands on. */
  readonly add: (page: number) => number;
  /** Writes the tree; gives the number of its root. */
  readonly write: () => number;
};

export function pageTree(file: PdfFile): PageTree {
  const root = file.next();
  const branches: { readonly number: number; readonly pages: number[] }[] = [];
  return {
    add: (page) => {
      let branch = branches.at(-1);
      if (branch === undefined || branch.pages.length === mostOnBranch) {
        branch = { number: file.next(), pages: [] };
        branches.push(branch);
      }
      branch.pages.push(page);
      return branch.number;
    },
    write: () => {
      for (const { number, pages } of branches) {
        const kids = pages.map((page) => `${page} 0 R`).join(' ');
        file.object(number, `<</Type/Pages/Parent ${root} 0 R/Count ${pages.length}/Kids[${kids}]>>`);
      }
      const count = branches.reduce((sum, { pages }) => sum + pages.length, 0);
      const kids = branches.map(({ number }) => `${number} 0 R`).join(' ');
      file.object(root, `<</Type/Pages/Count ${count}/Kids[${kids}]>>`);
      return root;
    },
  };
}

/** One bookmark for each person (ISO 32000-1, 12.3.3). */
export type Bookmarks = {
  readonly add: (title: string, page: number, top_pt: number) => void;
  /** Writes what is left; gives the number of the list, or null where one bookmark is all there is. */
  readonly write: () => number | null;
};

export function bookmarks(file: PdfFile): Bookmarks {
  const root = file.next();
  type Entry = { readonly number: number; readonly text: string };
  let [count, first, last] = [0, 0, null as Entry | null];
  const before: number[] = [];
  const close = (entry: Entry, next: number | null): void => {
    const previous = before.length === 0 ? '' : `/Prev ${before[0]} 0 R`;
    const following = next === null ? '' : `/Next ${next} 0 R`;
    file.object(entry.number, `<<${entry.text}/Parent ${root} 0 R${previous}${following}>>`);
    before[0] = entry.number;
  };
  return {
    add: (title, page, top_pt) => {
      const number = file.next();
      const text = `/Title${PDFHexString.fromText(title).toString()}/Dest[${page} 0 R/XYZ null ${top_pt} null]`;
      if (last === null) first = number;
      else close(last, number);
      last = { number, text };
      count += 1;
    },
    write: () => {
      if (last === null || count < 2) return null;
      close(last, null);
      file.object(root, `<</Type/Outlines/Count ${count}/First ${first} 0 R/Last ${last.number} 0 R>>`);
      return root;
    },
  };
}

/** For each page, by its place, the object that names the parts of its marks (ISO 32000-1, 14.7.4.4). */
export function writeParents(parents: readonly number[], file: PdfFile): number {
  const branches: string[] = [];
  for (let from = 0; from < parents.length; from += mostOnBranch) {
    const some = parents.slice(from, from + mostOnBranch);
    const pairs = some.map((number, at) => `${from + at} ${number} 0 R`).join(' ');
    const branch = file.next();
    file.object(branch, `<</Limits[${from} ${from + some.length - 1}]/Nums[${pairs}]>>`);
    branches.push(`${branch} 0 R`);
  }
  const root = file.next();
  file.object(root, `<</Kids[${branches.join(' ')}]>>`);
  return root;
}
