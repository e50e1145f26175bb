/** Levels and heights of a section, told in two columns beside it: leaders run level, and cross no other vessel. */
import type { Section, SectionVessel } from '../core/plan/figure.ts';
import type { Fit } from './fit.ts';

export type SideName = 'left' | 'right';

/** A height that wants a label at one side. */
export type SideAnchor = {
  readonly key: string;
  readonly side: SideName;
  /** Where the leader begins; null where another vessel stands in its way. */
  readonly x: number | null;
  readonly y: number;
};

/** Key of the label of a water line. */
export function levelKey({ role, index }: Pick<SectionVessel, 'role' | 'index'>, level: string): string {
  return role === 'bed' ? `bed${index + 1}.${level}` : `${role}.${level}`;
}

/** Water lines at the right, heights over the floor of the place at the left; the other side where that is blocked. */
export function sideAnchors(section: Section, at: Fit): readonly SideAnchor[] {
  return [...levels(section, at), ...heights(section, at)];
}

function levels(section: Section, at: Fit): readonly SideAnchor[] {
  const kinds = section.vessels.filter((one) => one.copy === 0);
  return kinds.flatMap((kind) => {
    const copies = section.vessels.filter((one) => one.role === kind.role && one.index === kind.index);
    return kind.levels.map(({ key }) => {
      const ends = copies.flatMap((copy) =>
        copy.levels.filter((one) => one.key === key).map((level) => ({ ...level, copy })),
      );
      const [first, last] = [ends[0], ends.at(-1)];
      const wish = {
        key: levelKey(kind, key),
        y: at.y(last?.y_mm ?? 0),
        right: last && isFree(section, last.copy, last.y_mm, 'right') ? at.x(last.right_mm) : null,
        left: first && isFree(section, first.copy, first.y_mm, 'left') ? at.x(first.left_mm) : null,
      };
      return anchor(wish, 'right');
    });
  });
}

function heights(section: Section, at: Fit): readonly SideAnchor[] {
  return section.heights.map(({ y_mm, of }, i) => {
    const ends = section.vessels.filter((one) =>
      of.some(({ role, index }) => one.role === role && one.index === index),
    );
    const points = ends.map((vessel) => ({ vessel, xs: xsAt(vessel, y_mm) }));
    const left = points.find(({ vessel }) => isFree(section, vessel, y_mm, 'left'));
    const right = [...points].reverse().find(({ vessel }) => isFree(section, vessel, y_mm, 'right'));
    const wish = {
      key: `height.${i}`,
      y: at.y(y_mm),
      left: left === undefined ? null : at.x(Math.min(...left.xs)),
      right: right === undefined ? null : at.x(Math.max(...right.xs)),
    };
    return anchor(wish, 'left');
  });
}

type Wish = {
  readonly key: string;
  readonly y: number;
  readonly left: number | null;
  readonly right: number | null;
};

function anchor({ key, y, ...xs }: Wish, wanted: SideName): SideAnchor {
  const other = wanted === 'left' ? 'right' : 'left';
  const side = xs[wanted] === null && xs[other] !== null ? other : wanted;
  return { key, y, side, x: xs[side] };
}

/** Where a vessel's own wall or floor lies at a height that is one of its own. */
function xsAt({ outline }: SectionVessel, y_mm: number): readonly number[] {
  const near = outline.filter(([, y]) => Math.abs(y - y_mm) < 1).map(([x]) => x);
  return near.length > 0 ? near : outline.map(([x]) => x);
}

/** Nothing else stands beside this vessel at that height. Baskets in the tank are inside it, so the tank is in their way. */
function isFree(section: Section, vessel: SectionVessel, y_mm: number, side: SideName): boolean {
  const own = vessel.outline.map(([x]) => x);
  return section.vessels.every((one) => {
    const xs = one.outline.map(([x]) => x);
    const ys = one.outline.map(([, y]) => y);
    const beside = Math.min(...ys) < y_mm && y_mm < Math.max(...ys);
    const beyond = side === 'left' ? Math.min(...xs) < Math.min(...own) : Math.max(...xs) > Math.max(...own);
    return one === vessel || !beside || !beyond;
  });
}
