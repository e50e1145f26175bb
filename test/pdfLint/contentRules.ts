/** Whether everything on the pages is either part of the document or an artifact, and hangs where the structure says. */
import type { Command } from './readContent.ts';
import type { Looked } from './document.ts';
import type { Tell } from './lint.ts';

const paints = new Set([
  'Tj',
  'TJ',
  "'",
  '"',
  'f',
  'F',
  'f*',
  'B',
  'B*',
  'b',
  'b*',
  'S',
  's',
  'sh',
  'Do',
  'EI',
]);

type Mark = 'artifact' | 'other' | number;

export function checkContent({ pages, parts }: Looked, tell: Tell): void {
  const hung = new Set(parts.flatMap(({ marks }) => marks.map(({ page, mark }) => `${page} ${mark}`)));
  for (const [index, { commands }] of pages.entries()) checkPage(commands, index, hung, tell);
}

function checkPage(commands: readonly Command[], page: number, hung: ReadonlySet<string>, tell: Tell): void {
  const open: Mark[] = [];
  const at = `page ${page + 1}`;
  const isIn = (kind: 'artifact' | 'tagged') =>
    open.some((mark) => (kind === 'artifact' ? mark === 'artifact' : typeof mark === 'number'));
  for (const { operator, operands } of commands) {
    if (operator === 'BMC' || operator === 'BDC') {
      const mark = markOf(operands);
      if (mark === 'artifact' && isIn('tagged')) tell('01-003', at);
      if (typeof mark === 'number' && isIn('artifact')) tell('01-004', at, `mark ${mark}`);
      if (typeof mark === 'number' && !hung.has(`${page} ${mark}`))
        tell('01-005', at, `mark ${mark} hangs nowhere`);
      open.push(mark);
    } else if (operator === 'EMC') open.pop();
    else if (paints.has(operator) && !isIn('artifact') && !isIn('tagged')) tell('01-005', at, operator);
  }
}

function markOf([tag, properties]: Command['operands']): Mark {
  if (tag === '/Artifact') return 'artifact';
  const [, mark] = /\/MCID\s+(\d+)/.exec(String(properties ?? '')) ?? [];
  return mark === undefined ? 'other' : Number(mark);
}
