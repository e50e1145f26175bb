/** Which characters the codes of a font stand for (ISO 32000-1, 9.10.3), for whoever searches, copies or reads aloud. */

export type Coded = { readonly code: number; readonly text: string };

/** At most a hundred lines in a block (Adobe Technical Note 5014). */
const linesInBlock = 100;

/** @param bytes how many of them make a code */
export function unicodeMap(letters: readonly Coded[], bytes: 1 | 2): string {
  const code = (value: number) => hex(value).slice(-2 * bytes);
  const lines = letters.map((letter) => `<${code(letter.code)}> <${utf16(letter.text)}>`);
  const blocks: string[] = [];
  for (let at = 0; at < lines.length; at += linesInBlock) {
    const block = lines.slice(at, at + linesInBlock);
    blocks.push(`${block.length} beginbfchar`, ...block, 'endbfchar');
  }
  return [
    '/CIDInit /ProcSet findresource begin',
    '12 dict begin',
    'begincmap',
    '/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def',
    '/CMapName /Adobe-Identity-UCS def',
    '/CMapType 2 def',
    '1 begincodespacerange',
    `<${code(0)}> <${code(0xffff)}>`,
    'endcodespacerange',
    ...blocks,
    'endcmap',
    'CMapName currentdict /CMap defineresource pop',
    'end',
    'end',
  ].join('\n');
}

export function hex(value: number): string {
  return value.toString(16).toUpperCase().padStart(4, '0');
}

export function utf16(text: string): string {
  return Array.from({ length: text.length }, (_, at) => hex(text.charCodeAt(at))).join('');
}
