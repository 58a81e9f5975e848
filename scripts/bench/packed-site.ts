import { existsSync, readFileSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join } from 'node:path';
import { gzipSync } from 'node:zlib';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.svg': 'image/svg+xml',
};

/** The built site as most hosts send it, packed by gzip. @returns its origin, and what ends it */
export const servePacked = async (
  site: string,
): Promise<{ origin: string; stop: () => Promise<unknown> }> => {
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://a.example');
    const path = join(site, pathname.endsWith('/') ? `${pathname}index.html` : pathname);
    if (!existsSync(path) || !statSync(path).isFile()) {
      response.writeHead(404).end();
      return;
    }
    const type = TYPES[extname(path)];
    const content = readFileSync(path);
    if (type === undefined) response.end(content);
    else {
      response.writeHead(200, { 'Content-Type': type, 'Content-Encoding': 'gzip' });
      response.end(gzipSync(content));
    }
  });
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  const stop = (): Promise<unknown> => {
    server.closeAllConnections();
    return new Promise((resolve) => server.close(resolve));
  };
  return { origin: `http://127.0.0.1:${(server.address() as AddressInfo).port}`, stop };
};
