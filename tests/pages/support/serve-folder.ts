import { readFile } from 'node:fs/promises';
import { createServer, type IncomingMessage, type OutgoingHttpHeaders, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8', '.js': 'text/javascript; charset=utf-8', '.css': 'text/css; charset=utf-8',
  '.json': 'application/json', '.csv': 'text/csv; charset=utf-8',
};

export interface Server {
  /** Begin of every address, without the stroke at its end. */
  readonly address: string;
  close(): Promise<void>;
}

/**
 * Serves a folder on a free port of this machine, and the same again under `/copy`. What is posted to `/echo` comes
 * back as JSON: the names and values of the form's fields.
 * @param headers sent with every answer.
 */
export async function serveFolder(folder: string, headers: OutgoingHttpHeaders = {}): Promise<Server> {
  const server = createServer((request, response) => {
    void (request.method === 'POST' ? echo(request, response) : send(folder, { request, response, headers }));
  });
  await new Promise<void>((listening) => { server.listen(0, '127.0.0.1', listening); });
  return {
    address: `http://127.0.0.1:${(server.address() as AddressInfo).port}`,
    close: () => new Promise((closed) => {
      server.close(() => { closed(); });
      server.closeAllConnections();
    }),
  };
}

interface Exchange {
  readonly request: IncomingMessage;
  readonly response: ServerResponse;
  readonly headers: OutgoingHttpHeaders;
}

async function send(folder: string, { request, response, headers }: Exchange): Promise<void> {
  if (request.url === '/favicon.ico') {
    response.writeHead(204).end();
    return;
  }
  const asked = decodeURIComponent(new URL(request.url!, 'http://server').pathname.replace(/^\/copy\//, '/'));
  const path = normalize(asked.endsWith('/') ? `${asked}index.html` : asked);
  try {
    const bytes = await readFile(join(folder, path));
    response.writeHead(200, { 'content-type': TYPES[extname(path)] ?? 'application/octet-stream', ...headers })
      .end(bytes);
  } catch {
    response.writeHead(404, { 'content-type': 'text/plain', ...headers }).end('There is no such file.');
  }
}

async function echo(request: IncomingMessage, response: ServerResponse): Promise<void> {
  let body = '';
  request.setEncoding('utf8');
  for await (const part of request) body += part as string;
  response.writeHead(200, { 'content-type': 'application/json' }).end(
    JSON.stringify(Object.fromEntries(new URLSearchParams(body))));
}
