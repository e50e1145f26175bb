/** The sheets of a class laid out while nobody waits for them yet: as soon as its roster was read. */
import type { WorkshopPart } from '../../core/workshop/parts.ts';
import type { Press } from '../../paper/press.ts';
import type { StackSet } from '../../paper/toStackPdf.ts';
import type { ClassDesk } from '../../sheets/handouts/classDesk.ts';
import { workshopStack } from '../../sheets/handouts/workshopStack.ts';
import type { ClassAsk } from './classMessages.ts';

/** What a desk is made from. */
type Class = Pick<ClassAsk, 'raw' | 'roster' | 'day'>;

export type HeadStart = {
  readonly isFor: (other: Class) => boolean;
  /**
   * The desk with what was laid out, for somebody who waits for a part: nothing else is made ready any more. Null where
   * the part has none of the sheets that are being laid out; these are then given up.
   */
  readonly take: (part: WorkshopPart) => ClassDesk | null;
  /** There is another class. What somebody waits for is finished all the same. */
  readonly end: () => void;
};

/** Who changes a field usually changes another one soon. */
const quiet_s = 0.4;

/** Of more people too much would be made ready, and kept, that perhaps nobody asks for. */
const mostPeople = 60;

/** @param failed told when it could not be laid out; whoever asks for it is then told why */
export function headStart(
  of: Class,
  deskOf: (press: Press) => ClassDesk,
  press: Press,
  failed: () => void,
): HeadStart {
  let pace: 'idle' | 'done' | 'hurry' | 'over' = 'idle';
  const layOutAnew: Press['layOutAnew'] = async (sheet) => {
    // Whatever was typed or pressed meanwhile is heard first.
    if (pace === 'idle') await after(0);
    if (pace === 'over') throw new Error('These sheets are not wanted any more.');
    return press.layOutAnew(sheet);
  };
  const desk = keeping(deskOf({ ...press, layOutAnew }));
  if (desk.people.length > mostPeople) pace = 'over';
  const ahead = async (): Promise<void> => {
    await after(quiet_s);
    if (pace !== 'idle') return;
    await printed(desk, () => pace === 'idle');
    if (pace === 'idle') pace = 'done';
  };
  ahead().catch(() => {
    if (pace !== 'hurry') failed();
  });
  return {
    isFor: (other) => isSame(of, other),
    take: (part) => {
      if (pace === 'idle') pace = part === 'stack' ? 'hurry' : 'over';
      return pace === 'over' ? null : desk;
    },
    end: () => {
      if (pace === 'idle') pace = 'over';
    },
  };
}

/** Lays the sheets of the whole class out once, whoever asks for them. */
function keeping(desk: ClassDesk): ClassDesk {
  let kept: ReturnType<ClassDesk['ofClass']> | null = null;
  return {
    ...desk,
    ofClass: () => {
      kept ??= desk.ofClass();
      return kept;
    },
  };
}

/** A stack for nobody: what stays of it is what the desk keeps, and a writer that is loaded. */
async function printed(desk: ClassDesk, goesOn: () => boolean): Promise<void> {
  const { print } = await workshopStack(desk, 'everything');
  async function* sets(): AsyncGenerator<StackSet, void, void> {
    for await (const set of print.sets) {
      if (!goesOn()) throw new Error('Somebody waits for another stack.');
      yield set;
    }
  }
  for await (const _ of desk.press.toStackPdf({ ...print, sets: sets() })) await after(0);
}

function after(wait_s: number): Promise<void> {
  return new Promise((go) => {
    setTimeout(go, wait_s * 1000);
  });
}

function isSame(one: Class, other: Class): boolean {
  return (
    one.day === other.day &&
    JSON.stringify(one.raw) === JSON.stringify(other.raw) &&
    isSameFile(one.roster, other.roster)
  );
}

function isSameFile(one: Class['roster'], other: Class['roster']): boolean {
  if (!(one instanceof Uint8Array) || !(other instanceof Uint8Array)) return one === other;
  return one.length === other.length && one.every((byte, at) => byte === other[at]);
}
