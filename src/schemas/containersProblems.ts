/** What is wrong with a system, told to somebody who wrote nothing but two containers. */
import type { Problem } from '../core/problem.ts';

/** What comes of a bed that takes more water than the tank can give. */
const bedTooLarge: ReadonlySet<Problem['code']> = new Set(['bedsTakeTooMuch', 'intakeAboveLow']);

/** Problems by the words of the roster, tank and bed; that a bed takes too much is told once. */
export function ofContainers(problems: readonly Problem[]): readonly Problem[] {
  const others = problems.filter(({ code }) => !bedTooLarge.has(code));
  const bed: readonly Problem[] =
    others.length < problems.length ? [{ code: 'containersBedLarge', place: [] }] : [];
  // What we put between the containers, such as the water line, is no mistake of theirs; it follows from one.
  const written = others.filter(({ place }) => place.includes('container'));
  const told = written.length > 0 ? written : others;
  return [...bed, ...told.map((one) => ({ ...one, place: inRoster(one.place) }))];
}

/** `beds[0].container.width_mm` is `bed.width_mm` to them. */
function inRoster(place: Problem['place']): Problem['place'] {
  const role = place[0] === 'beds' ? 'bed' : place[0];
  const at = place.indexOf('container');
  return role === undefined || at < 0 ? place : [role, ...place.slice(at + 1)];
}
