import { createServer } from 'node:http';

/** One page in the list of pages that a driver asks for. */
interface Target {
  readonly title: string;
  readonly url: string;
  readonly webSocketDebuggerUrl: string;
}

/** What the browser opens first: the driver stumbles over a window that has never loaded anything. */
const firstPage = '<!doctype html><title>Ready</title><p>Ready</p>';

/**
 * WebKit's remote inspector lists its pages as a web page for people; a driver asks for /json. This small server stands
 * between the two: it reads the list and says the same as JSON.
 */
export async function inspectorBridge(
  inspectorPort: number,
): Promise<{ url: string; close(): Promise<void> }> {
  const inspector = `127.0.0.1:${inspectorPort}`;
  const server = createServer((request, response) => {
    const answer = (status: number, body: string, type = 'application/json') => {
      response.writeHead(status, { 'Content-Type': type });
      response.end(body);
    };
    if (!request.url?.startsWith('/json')) return answer(200, firstPage, 'text/html');
    fetch(`http://${inspector}/`)
      .then((page) => page.text())
      .then((page) => answer(200, JSON.stringify(targetsIn(page, inspector))))
      .catch(() => answer(503, '[]'));
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  return {
    url: `http://127.0.0.1:${port}`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/** Each page has its name, its address and the path of its socket, in this order. */
export function targetsIn(page: string, inspector: string): Target[] {
  const names = [...page.matchAll(/class="targetname">([^<]*)</g)].map((match) => match[1] ?? '');
  const urls = [...page.matchAll(/class="targeturl">([^<]*)</g)].map((match) => match[1] ?? '');
  const sockets = [...page.matchAll(/\/socket\/\d+\/\d+\/WebPage/g)].map((match) => match[0]);
  return [...new Set(sockets)].map((socket, i) => ({
    title: names[i] ?? '',
    url: urls[i] ?? '',
    webSocketDebuggerUrl: `ws://${inspector}${socket}`,
  }));
}
