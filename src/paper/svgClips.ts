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

/** Equal clips are one object, so that writers cut once for a row of items. */
export function clipMaker(): ClipMaker {
  const made = new Map<string, Clip>();
  const numbers = new Map<Clip, number>();
  const cut: ClipMaker = (reference, around) => {
    if (reference === undefined) return around.clip;
    const id = /^url\(#(.*)\)$/.exec(reference)?.[1] ?? '';
    const mark = around.clips.get(id);
    if (!mark) throw new Error(`The press cannot find the clip ${reference}.`);
    const within = cut(mark.attributes.get('clip-path'), around);
    checkKnown(mark);
    mark.children.forEach(checkKnown);
    const rules = new Set(mark.children.map((child) => ruleFrom(child.attributes.get('clip-rule'))));
    const [rule = 'nonzero'] = rules;
    if (rules.size > 1) throw new Error('A clip of paths with different rules cannot be printed.');
    const own = combine(around.matrix, readTransform(mark.attributes.get('transform') ?? ''));
    const path = mark.children.flatMap((child) => {
      return placePath(pathOf(child), combine(own, readTransform(child.attributes.get('transform') ?? '')));
    });
    const key = JSON.stringify([path, rule, within ? numbers.get(within) : null]);
    const clip = made.get(key) ?? { path, rule, within };
    made.set(key, clip);
    if (!numbers.has(clip)) numbers.set(clip, numbers.size);
    return clip;
  };
  return cut;
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
