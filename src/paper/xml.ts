/** A reader for the well-formed, namespace-free markup that the layout engine writes. */

export type Mark = {
  readonly name: string;
  readonly attributes: ReadonlyMap<string, string>;
  readonly children: readonly Mark[];
  /** The text directly inside. */
  readonly text: string;
};

type Open = { name: string; attributes: Map<string, string>; children: Open[]; text: string };

const named: Readonly<Record<string, string>> = { amp: '&', lt: '<', gt: '>', quot: '"', apos: "'" };
// A tag, with attribute values that may hold ">", or the text up to the next tag.
const pieces = /<(\/?)([\w:.-]+)((?:\s+[\w:.-]+="[^"]*")*)\s*(\/?)>|([^<]+)/gy;
const attribute = /([\w:.-]+)="([^"]*)"/g;

/** Throws where the markup is not what we can read. */
export function readXml(source: string): Mark {
  const top: Open = { name: '', attributes: new Map(), children: [], text: '' };
  const open: Open[] = [top];
  pieces.lastIndex = 0;
  for (let at = 0; at < source.length; at = pieces.lastIndex) {
    const found = pieces.exec(source);
    const around = open.at(-1);
    if (!found || !around) throw new Error(`Markup that cannot be read: ${source.slice(at, at + 60)}`);
    const [, slash, name = '', attributes = '', selfClosing, text] = found;
    if (text !== undefined) around.text += readEntities(text);
    else if (slash) close(open, name);
    else {
      const mark: Open = { name, attributes: readAttributes(attributes), children: [], text: '' };
      around.children.push(mark);
      if (!selfClosing) open.push(mark);
    }
  }
  const [root] = top.children;
  if (open.length !== 1 || !root) throw new Error('Markup that ends in the middle.');
  return root;
}

function close(open: Open[], name: string): void {
  const closed = open.pop();
  if (closed?.name !== name || open.length === 0)
    throw new Error(`Markup closes <${name}>, which is not open.`);
}

function readAttributes(source: string): Map<string, string> {
  const found = new Map<string, string>();
  for (const [, name = '', value = ''] of source.matchAll(attribute)) found.set(name, readEntities(value));
  return found;
}

function readEntities(text: string): string {
  if (!text.includes('&')) return text;
  return text.replace(
    /&(?:#x([\da-f]+)|#(\d+)|(\w+));/gi,
    (whole, hex?: string, decimal?: string, name?: string) => {
      if (hex) return String.fromCodePoint(Number.parseInt(hex, 16));
      if (decimal) return String.fromCodePoint(Number.parseInt(decimal, 10));
      return (name && named[name]) ?? whole;
    },
  );
}

/** What XML 1.0 does not allow, not even escaped, and the control characters that it only tolerates. */
const illegal = /(?![\t\n\r])\p{Cc}|[\ufffe\uffff]|\p{Surrogate}/gu;

/** Text as it may stand in an element or in a quoted attribute. */
export function escapeXml(text: string): string {
  return text
    .replace(illegal, '')
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
