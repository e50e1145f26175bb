import type { MadeFile } from './messages.ts';

/** Hands a file to the browser, which saves it where the person's downloads go. */
export function saveFile({ name, mime, bytes }: MadeFile): void {
  const url = URL.createObjectURL(new Blob([bytes], { type: mime }));
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // The browser takes the file after this turn; a minute is long enough for all of them.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
}
