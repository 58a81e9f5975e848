import { existsSync, readFileSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join } from 'node:path';
import { SITE } from './site.ts';

const TYPES: Record<string, string> = {
  html: 'text/html',
  js: 'text/javascript',
  css: 'text/css',
  json: 'application/json',
  svg: 'image/svg+xml',
};

/** A plain host of the built site that can be changed and taken away while a browser looks at it. */
export interface FileServer {
  origin: string;
  /** Serves a text instead of a file, by path without the first slash; nothing makes it missing. */
  instead: Map<string, string | undefined>;
  stop: () => Promise<void>;
}

/**
 * Serves a built site on a free port as any static host would, with no rules of its own.
 * @param folder where it was built
 * @param base the path that it is under, with both slashes
 */
export const serveFiles = async (folder = SITE, base = '/'): Promise<FileServer> => {
  const instead = new Map<string, string | undefined>();
  const contentOf = (path: string): string | Buffer | undefined => {
    if (instead.has(path)) return instead.get(path);
    const file = join(folder, path);
    return existsSync(file) ? readFileSync(file) : undefined;
  };
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://a.example');
    const path = decodeURIComponent(pathname.slice(base.length)).replace(/(^|\/)$/, '$1index.html');
    const content = pathname.startsWith(base) ? contentOf(path) : undefined;
    const type = TYPES[path.split('.').at(-1) ?? ''] ?? 'application/octet-stream';
    response.writeHead(content === undefined ? 404 : 200, {
      'Content-Type': content === undefined ? 'text/html' : type,
    });
    response.end(content ?? readFileSync(join(folder, '404.html')));
  });
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  const { port } = server.address() as AddressInfo;
  const stop = async (): Promise<void> => {
    if (!server.listening) return;
    server.closeAllConnections();
    await new Promise((resolve) => server.close(resolve));
  };
  return { origin: `http://127.0.0.1:${port}`, instead, stop };
};
