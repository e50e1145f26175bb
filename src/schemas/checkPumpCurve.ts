/** Points of a pump's curve against each other: more flow, less height. */
import type { Problem } from '../core/problem.ts';
import type { Parts } from './parts.ts';
import type { Path } from './schemaAt.ts';

export function checkPumpCurve(
  pump: Pick<NonNullable<Parts['pump']>, 'curve'> | null | undefined,
  place: Path,
): readonly Problem[] {
  const curve = pump?.curve ?? [];
  const [first] = curve;
  if (first !== undefined && curve.length === 1) return checkSinglePoint(first, [...place, 'curve', 0]);
  return curve.flatMap((point, index) => {
    const before = curve[index - 1];
    if (before === undefined) return [];
    const at = [...place, 'curve', index];
    return [
      ...(point.flow_L_h > before.flow_L_h
        ? []
        : [wrong([...at, 'flow_L_h'], point.flow_L_h, before.flow_L_h, 'L_h')]),
      ...(point.head_m < before.head_m ? [] : [wrong([...at, 'head_m'], point.head_m, before.head_m, 'm')]),
    ];
  });
}

/** A curve from a single point needs both: it is drawn from there to no flow and to no height. */
function checkSinglePoint(
  point: { readonly flow_L_h: number; readonly head_m: number },
  at: Path,
): readonly Problem[] {
  const bare = (key: 'flow_L_h' | 'head_m', min: number, max: number, unit: string): readonly Problem[] =>
    point[key] > 0 ? [] : [{ code: 'outOfRange', place: [...at, key], given: '0', min, max, unit }];
  return [...bare('flow_L_h', 1, 200_000, 'L_h'), ...bare('head_m', 0.01, 100, 'm')];
}

function wrong(place: Path, given: number, min: number, unit: string): Problem {
  return { code: 'pumpCurveOrder', place, given: String(given), min, unit };
}
