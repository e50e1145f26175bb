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
  return token.startsWith('(') ? hexOf(unescaped(token.slice(1, -1))) : token;
}

/** A string as its bytes are meant (ISO 32000-1, 7.3.4.2). */
function unescaped(text: string): string {
  const signs: Readonly<Record<string, string>> = { n: '\n', r: '\r', t: '\t', b: '\b', f: '\f' };
  return text.replace(/\\([0-7]{1,3}|[\s\S])/g, (_, one: string) =>
    /^[0-7]/.test(one) ? String.fromCharCode(Number.parseInt(one, 8)) : (signs[one] ?? one),
  );
}

function hexOf(text: string): string {
  return [...text].map((sign) => sign.charCodeAt(0).toString(16).padStart(2, '0')).join('');
}
