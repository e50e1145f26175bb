export type Style = {
  readonly [name: string]: unknown;
  readonly display?: unknown;
  readonly position?: unknown;
  readonly fontStyle?: unknown;
  readonly fontWeight?: unknown;
};

/** The styles a sheet may use: those that the layout engine lays out and the press prints. */
const knownStyles = [
  /^(display|position|top|right|bottom|left|inset|boxSizing|aspectRatio|overflow|overflow[XY])$/,
  /^(width|height|minWidth|minHeight|maxWidth|maxHeight)$/,
  /^(flex|flexDirection|flexWrap|flexFlow|flexGrow|flexShrink|flexBasis|gap|rowGap|columnGap)$/,
  /^(alignItems|alignContent|alignSelf|justifyContent|justifyItems|justifySelf)$/,
  /^grid(TemplateColumns|TemplateRows|TemplateAreas|Column|Row|Area|AutoFlow|AutoColumns|AutoRows)$/,
  /^(margin|padding)(Top|Right|Bottom|Left)?$/,
  /^border(Top|Right|Bottom|Left)?(Width|Style|Color)?$/,
  /^border(TopLeft|TopRight|BottomLeft|BottomRight)?Radius$/,
  /^(background|backgroundColor|color|transform|transformOrigin)$/,
  /^(fontSize|fontWeight|fontStyle|lineHeight|textAlign|textIndent|verticalAlign|textDecoration\w*)$/,
  /^(whiteSpace|wordBreak|overflowWrap|textWrap|textOverflow|lineClamp)$/,
];

/** Styles that the layout engine would measure but not report, or that print badly: each with the way out. */
const refusedStyles: Readonly<Record<string, string>> = {
  fontFamily: 'The press chooses the fonts.',
  fontFeatureSettings: 'The press sets all type with its default features.',
  fontVariant: 'The press sets all type with its default features.',
  fontVariantNumeric: 'The press sets all type with its default features.',
  fontKerning: 'The press sets all type with its default features.',
  letterSpacing: 'Spaced-out words are read letter by letter. Choose another size or weight.',
  wordSpacing: 'Leave spaces as they are.',
  textTransform: 'Write the letters as they shall stand.',
  opacity: 'Give the colour itself, as it shall be printed.',
  boxShadow: 'Sheets have no shadows.',
  textShadow: 'Sheets have no shadows.',
  filter: 'Sheets have no filters.',
  backdropFilter: 'Sheets have no filters.',
  backgroundImage: 'Draw with an inline svg.',
  maskImage: 'Cut with overflow hidden, or with a clipPath in an inline svg.',
  mixBlendMode: 'Inks do not blend.',
  outline: 'Use a border.',
  visibility: 'Leave out what shall not be printed.',
  WebkitTextStroke: 'Type has no outline.',
  zIndex: 'Items are painted in the order they are written.',
};

const weights: ReadonlyMap<unknown, number> = new Map<unknown, number>([
  [400, 400],
  ['normal', 400],
  [700, 800],
  [800, 800],
  ['bold', 800],
]);

/** The node's mark goes into the list of font families, the one thing that the engine writes on every word. */
export function settleStyle(style: Style, tag: string, path: string, index: number): Style {
  for (const [name, value] of Object.entries(style)) {
    const hint = refusedStyles[name];
    if (hint !== undefined && value !== undefined) throw refusal(`style ${name} on <${tag}>`, path, hint);
    if (!knownStyles.some((known) => known.test(name))) {
      throw refusal(`style ${name} on <${tag}>`, path, 'It does not know that style.');
    }
    if (name.startsWith('background') && /gradient|url\(/.test(String(value))) {
      throw refusal(`style ${name}: ${String(value)} on <${tag}>`, path, 'Draw with an inline svg.');
    }
  }
  if (style.display === 'none') {
    throw refusal(`style display: none on <${tag}>`, path, 'Leave out what shall not be printed.');
  }
  if ((style.fontStyle ?? 'normal') !== 'normal') {
    throw refusal(`style fontStyle on <${tag}>`, path, 'Sheets have two weights and no italics.');
  }
  const settled: Record<string, unknown> = { ...style, fontFamily: nodeMark(index) };
  if (style.fontWeight === undefined) return settled;
  const weight = weights.get(style.fontWeight);
  if (weight === undefined) throw refusal(`style fontWeight on <${tag}>`, path, 'It is 400 or 800.');
  return { ...settled, fontWeight: weight };
}

function nodeMark(index: number): string {
  return `node-${index}`;
}

export function nodeOfMark(family: string): number {
  const [, index] = /node-(\d+)/.exec(family) ?? [];
  if (index === undefined) throw new Error(`Words that belong to no node: font-family "${family}".`);
  return Number(index);
}

export function refusal(what: string, path: string, hint: string): Error {
  return new Error(`The press does not print ${what} (at ${path || 'the root'} of the sheet). ${hint}`);
}
