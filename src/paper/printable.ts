/** Letters that were typed, or copied from print, as one sign. */
const ligatures = /[\ufb00-\ufb06]/g;

/**
 * What has no shape on paper. A joiner or non-joiner after a letter of a script that joins is kept, as it changes how
 * its neighbours are drawn.
 */
const unprintable =
  /(?![\t\n])\p{Cc}|(?<![\p{scx=Arabic}\p{scx=Devanagari}\p{scx=Bengali}\p{scx=Tamil}])[\u200c\u200d]|(?![\u200c\u200d])\p{Default_Ignorable_Code_Point}/gu;

/**
 * A text as it is printed: composed, and without control characters, direction marks, soft hyphens and joiners that
 * join nothing. A half surrogate becomes the replacement character, which then is refused as any other that no font has.
 */
export function printable(text: string): string {
  return text
    .replace(/\p{Surrogate}/gu, '\ufffd')
    .replace(/\r\n?/g, '\n')
    .replace(unprintable, '')
    .replace(ligatures, (joined) => joined.normalize('NFKC'))
    .normalize('NFC');
}
