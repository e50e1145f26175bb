/** Asks the browser to keep the whole site, so that it also works where there is no network. */

/** @param base where the site begins, with a slash at its end
 * @param ready called once all files are kept and this page is served from them */
export async function workOffline(base: string, ready: () => void): Promise<void> {
  const { serviceWorker } = navigator;
  if (!serviceWorker || !(await isThere(`${base}sw.js`))) return;
  serviceWorker.addEventListener('controllerchange', ready);
  if (serviceWorker.controller) ready();
  await serviceWorker.register(`${base}sw.js`, { scope: base }).catch(() => undefined);
}

/** While the site is being written there is none. Without network there is one, if it ever came. */
async function isThere(url: string): Promise<boolean> {
  if (navigator.serviceWorker.controller) return true;
  const answer = await fetch(url, { method: 'HEAD' }).catch(() => null);
  return answer?.ok === true && /javascript/.test(answer.headers.get('content-type') ?? '');
}
