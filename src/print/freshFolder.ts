/** A build is made beside the old one and takes its place by rename, so that nothing half-made is ever in `dist`. */
import { existsSync, readFileSync } from 'node:fs';
import { mkdir, readdir, rename, rm } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';

const making = '.dist-new-';
const replaced = '.dist-old-';

/**
 * Clears away what earlier builds left when they were killed. If one was killed between the two renames, the good
 * build is put back.
 */
export async function clearUp(target: string): Promise<void> {
  const parent = dirname(target);
  for (const name of await readdir(parent)) {
    const at = join(parent, name);
    const owner = ownerOf(name);
    if (owner === null || isRunning(owner)) continue;
    if (name.startsWith(replaced) && !existsSync(target)) await rename(at, target);
    else await rm(at, { recursive: true, force: true });
  }
}

/** A new, empty folder beside the target, on the same disk. */
export async function freshFolder(target: string): Promise<string> {
  const fresh = join(dirname(target), `${making}${process.pid}`);
  await mkdir(fresh);
  return fresh;
}

/** The fresh folder becomes the target; the old one goes only when the new one stands. */
export async function swapIn(fresh: string, target: string): Promise<void> {
  const old = join(dirname(target), `${replaced}${process.pid}`);
  if (existsSync(target)) await rename(target, old);
  try {
    await rename(fresh, target);
  } catch (error) {
    if (existsSync(old)) await rename(old, target);
    throw error;
  }
  await rm(old, { recursive: true, force: true });
}

function ownerOf(name: string): number | null {
  const prefix = [making, replaced].find((one) => basename(name).startsWith(one));
  const owner = prefix === undefined ? Number.NaN : Number(name.slice(prefix.length));
  return Number.isInteger(owner) ? owner : null;
}

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return pid !== process.pid && !isZombie(pid);
  } catch {
    return false;
  }
}

/** A killed process that nobody has collected yet still has its number, but it will never come back to its folder. */
function isZombie(pid: number): boolean {
  try {
    return /\) Z /.test(readFileSync(`/proc/${pid}/stat`, 'utf8'));
  } catch {
    return false;
  }
}
