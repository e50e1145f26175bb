/** Whether a path leads nowhere but down from where it is written. */
export function liesBelow(path: string): boolean {
  return !/^[/~]|^[A-Za-z]:|\\/.test(path) && !path.split('/').includes('..');
}
