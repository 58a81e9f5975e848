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

/** A site that is served. */
export interface PackedSite {
  origin: string;
  /** What has been sent so far, bytes without heads: workers fetch too, which no page tells of. */
  sent: () => number;
  stop: () => Promise<unknown>;
}

/** The built site as most hosts send it, packed by gzip. */
export const servePacked = async (site: string): Promise<PackedSite> => {
  let sent = 0;
  const server = createServer((request, response) => {
    const { pathname } = new URL(request.url ?? '/', 'http://a.example');
    const path = join(site, pathname.endsWith('/') ? `${pathname}index.html` : pathname);
    if (!existsSync(path) || !statSync(path).isFile()) {
      response.writeHead(404).end();
      return;
    }
    const type = TYPES[extname(path)];
    const content = readFileSync(path);
    const body = type === undefined ? content : gzipSync(content);
    if (type !== undefined)
      response.writeHead(200, { 'Content-Type': type, 'Content-Encoding': 'gzip' });
    sent += body.length;
    response.end(body);
  });
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  const stop = (): Promise<unknown> => {
    server.closeAllConnections();
    return new Promise((resolve) => server.close(resolve));
  };
  const { port } = server.address() as AddressInfo;
  return { origin: `http://127.0.0.1:${port}`, sent: () => sent, stop };
};
