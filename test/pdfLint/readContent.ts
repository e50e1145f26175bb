/** Reads the commands of a page out of its content stream (ISO 32000-1, 7.8.2), as far as the lint needs them. */

export type Operand = number | string | readonly Operand[];
export type Command = { readonly operator: string; readonly operands: readonly Operand[] };

/** Names keep their slash, strings are given as their bytes in hexadecimal, dictionaries as their source. */
export function commandsOf(bytes: Uint8Array): readonly Command[] {
  const text = new TextDecoder('latin1').decode(bytes);
  const commands: Command[] = [];
  let operands: Operand[] = [];
  const open: Operand[][] = [];
  for (const [token] of text.matchAll(tokens)) {
    if (token === '[') {
      open.push(operands);
      operands = [];
    } else if (token === ']') {
      const list = operands;
      operands = open.pop() ?? [];
      operands.push(list);
    } else if (/^[-+.\d]/.test(token)) operands.push(Number(token));
    else if (/^[/<(]/.test(token)) operands.push(token.startsWith('<<') ? token : plain(token));
    else if (!token.startsWith('%')) {
      commands.push({ operator: token, operands });
      operands = [];
    }
  }
  return commands;
}

const tokens =
  /%[^\n\r]*|<<.*?>>|<[0-9A-Fa-f\s]*>|\((?:\\.|[^\\()])*\)|\/[^\s/<>()[\]]*|[[\]]|[^\s/<>()[\]%]+/gs;

function plain(token: string): string {
  if (token.startsWith('<')) return token.slice(1, -1).replace(/\s/g, '');
  return token;
}
