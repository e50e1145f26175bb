import type { Ink } from './page.ts';

/** The colours that CSS names and a sheet of one ink needs; all others are written as numbers. */
const named: Readonly<Record<string, string>> = {
  black: '#000000',
  white: '#ffffff',
  gray: '#808080',
  grey: '#808080',
  silver: '#c0c0c0',
  red: '#ff0000',
  green: '#008000',
  blue: '#0000ff',
};

/** Reads `#rgb`, `#rrggbb`, both with alpha, `rgb()`, `rgba()` and a few names. Null where nothing is painted. */
export function readInk(source: string): Ink | null {
  const text = source.trim().toLowerCase();
  if (text === 'none' || text === 'transparent') return null;
  const ink = fromHex(named[text] ?? text) ?? fromFunction(text);
  if (!ink) throw new Error(`The press has no ink "${source}". Write it as #rrggbb.`);
  return ink.alpha_frac === 0 ? null : ink;
}

function fromHex(text: string): Ink | null {
  const digits = /^#([\da-f]{3,4}|[\da-f]{6}|[\da-f]{8})$/.exec(text)?.[1];
  if (digits === undefined) return null;
  const long = digits.length <= 4 ? [...digits].map((digit) => digit + digit).join('') : digits;
  const [red = 0, green = 0, blue = 0, alpha = 255] = (long.match(/../g) ?? []).map((pair) =>
    Number.parseInt(pair, 16),
  );
  return { red, green, blue, alpha_frac: alpha / 255 };
}

function fromFunction(text: string): Ink | null {
  const list = /^rgba?\(([^()]*)\)$/.exec(text)?.[1];
  const parts = list?.match(/[\d.]+%?/g);
  if (!parts || parts.length < 3 || parts.length > 4) return null;
  const [red = 0, green = 0, blue = 0] = parts.slice(0, 3).map((part) => portion(part, 255));
  return { red, green, blue, alpha_frac: portion(parts[3] ?? '1', 1) };
}

function portion(part: string, whole: number): number {
  return part.endsWith('%') ? (Number(part.slice(0, -1)) / 100) * whole : Number(part);
}
