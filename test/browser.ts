import { createServer, type Server } from 'node:http';
import { access, constants, readFile, stat } from 'node:fs/promises';
import { delimiter, extname, join, normalize } from 'node:path';
import { type Browser, chromium } from 'playwright-core';

/** Nothing that a test opens may reach out: no updates, no syncing, no first-run pages. */
const quiet = [
  '--no-sandbox',
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  // Letters stand where their font puts them, not on whole pixels, whatever the machine is set to.
  '--font-render-hinting=none',
];

const names = ['chromium', 'chromium-browser', 'google-chrome-stable', 'google-chrome'];

/** The system's Chromium if it has one, else the one that a package carries. */
async function findChromium(): Promise<string> {
  const { PATH = '' } = process.env;
  const places = PATH.split(delimiter).flatMap((folder) => names.map((name) => join(folder, name)));
  for (const place of places) {
    if (await isProgram(place)) return place;
  }
  const carried = await import('@sparticuz/chromium');
  return carried.default.executablePath();
}

async function isProgram(place: string): Promise<boolean> {
  try {
    await access(place, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

export async function openBrowser(): Promise<Browser> {
  return chromium.launch({ executablePath: await findChromium(), args: quiet, headless: true });
}

/** What the pages of the site say of themselves, so that a test meets the same walls. */
export const policy = [
  "default-src 'none'",
  "script-src 'self' 'wasm-unsafe-eval'",
  "connect-src 'self'",
  "worker-src 'self'",
  "img-src 'self' blob:",
  "style-src 'self'",
  "font-src 'self'",
  "manifest-src 'self'",
].join('; ');

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
  '.json': 'application/json',
  '.wasm': 'application/wasm',
  '.woff': 'font/woff',
  '.woff2': 'font/woff2',
  '.pdf': 'application/pdf',
  '.png': 'image/png',
};

export type Served = { readonly origin: string; readonly close: () => Promise<void> };

/** Serves a folder on this machine alone, with the policy on every answer. */
export async function serve(folder: string): Promise<Served> {
  const server = createServer((request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url ?? '/', 'http://here').pathname));
    readFound(join(folder, path))
      .then(({ bytes, type }) => {
        response.writeHead(200, { 'content-type': type, 'content-security-policy': policy });
        response.end(bytes);
      })
      .catch(() => {
        response.writeHead(404);
        response.end();
      });
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  return { origin: originOf(server), close: () => closed(server) };
}

async function readFound(path: string): Promise<{ bytes: Buffer; type: string }> {
  const found = (await stat(path)).isDirectory() ? join(path, 'index.html') : path;
  return { bytes: await readFile(found), type: types[extname(found)] ?? 'application/octet-stream' };
}

function originOf(server: Server): string {
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('The server has no port.');
  return `http://127.0.0.1:${address.port}`;
}

function closed(server: Server): Promise<void> {
  return new Promise((resolve, reject) => {
    server.close((error) => (error ? reject(error) : resolve()));
    server.closeAllConnections();
  });
}
