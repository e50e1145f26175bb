import type { Clip, Matrix } from './page.ts';
import { combine, placePath } from './path.ts';
import { checkKnown } from './svgKnown.ts';
import { pathOf, ruleFrom } from './svgShapes.ts';
import { readTransform } from './transform.ts';
import type { Mark } from './xml.ts';

/** Where a reference to a clip is read: what cuts already, the coordinates, and the clips that can be named. */
export type Cutting = {
  readonly matrix: Matrix;
  readonly clip: Clip | null;
  readonly clips: ReadonlyMap<string, Mark>;
};

export type ClipMaker = (reference: string | undefined, around: Cutting) => Clip | null;

type Known = { readonly matrix: Matrix; readonly clip: Clip | null; readonly made: Clip | null };

/** Equal clips are one object, so that writers cut once for a row of items. */
export function clipMaker(): ClipMaker {
  const known = new Map<Mark, Known[]>();
  const equal = new Map<string, Clip>();
  const numbers = new Map<Clip | null, number>([[null, 0]]);
  const cut: ClipMaker = (reference, around) => {
    if (reference === undefined) return around.clip;
    const mark = markOf(reference, around);
    const before = known.get(mark) ?? [];
    const same = before.find(({ matrix, clip }) => clip === around.clip && alike(matrix, around.matrix));
    if (same) return same.made;
    const clip = readClip(mark, around, cut(mark.attributes.get('clip-path'), around));
    const key = JSON.stringify([clip.path, clip.rule, numbers.get(clip.within)]);
    const made = equal.get(key) ?? clip;
    equal.set(key, made);
    if (!numbers.has(made)) numbers.set(made, numbers.size);
    known.set(mark, [...before, { matrix: around.matrix, clip: around.clip, made }]);
    return made;
  };
  return cut;
}

function alike(one: Matrix, two: Matrix): boolean {
  return one.every((value, at) => value === two[at]);
}

function markOf(reference: string, around: Cutting): Mark {
  const mark = around.clips.get(/^url\(#(.*)\)$/.exec(reference)?.[1] ?? '');
  if (!mark) throw new Error(`The press cannot find the clip ${reference}.`);
  return mark;
}

function readClip(mark: Mark, { matrix }: Cutting, within: Clip | null): Clip {
  checkKnown(mark);
  mark.children.forEach(checkKnown);
  const rules = new Set(mark.children.map((child) => ruleFrom(child.attributes.get('clip-rule'))));
  const [rule = 'nonzero'] = rules;
  if (rules.size > 1) throw new Error('A clip of paths with different rules cannot be printed.');
  const own = combine(matrix, readTransform(mark.attributes.get('transform') ?? ''));
  const path = mark.children.flatMap((child) => {
    return placePath(pathOf(child), combine(own, readTransform(child.attributes.get('transform') ?? '')));
  });
  return { path, rule, within };
}

/** Every clip that is defined anywhere in a document, by its id. */
export function clipsIn(root: Mark): ReadonlyMap<string, Mark> {
  const found = new Map<string, Mark>();
  const look = (mark: Mark): void => {
    const id = mark.attributes.get('id');
    if (mark.name === 'clipPath' && id !== undefined) found.set(id, mark);
    mark.children.forEach(look);
  };
  look(root);
  return found;
}
