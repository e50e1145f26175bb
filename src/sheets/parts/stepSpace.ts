/** The space behind a part of a step. */
import { mm } from '../../paper/measures.ts';

type Part = { readonly kind: 'number' } | { readonly kind: 'word'; readonly text: string };

/** No space behind a bracket that opens, nor before one that closes. */
export function spaceAfter(part: Part, next: Part | undefined): number {
  const opens = part.kind === 'word' && part.text.endsWith('(');
  const closes = next?.kind === 'word' && /^[);]/.test(next.text);
  return opens || closes ? 0 : mm(1.2);
}
