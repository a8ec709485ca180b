import { readFile } from 'node:fs/promises';
import type { Server } from 'node:http';
import type { Said } from '../measure/said.ts';
import { endedLines } from '../words/said.ts';
import { dataOf } from './data.ts';
import { writeResult } from './files.ts';
import type { Shell } from './shell.ts';

export interface PageOptions {
  readonly out?: string;
}

/** `copeleaf page`: writes the page to a file, or shows it to a browser on this machine until it is stopped. */
export async function page({ out }: PageOptions, shell: Shell): Promise<void> {
  const { commandAnswers: answers } = shell.words;
  const text = await readFile(new URL('dist/copeleaf.html', shell.home));
  if (out !== undefined) {
    await writeResult(out, text, shell);
    if (out !== '-') shell.err(endedLines([answers.pageWritten(out)]));
    return;
  }
  const server = await serverOf(text, answers.onlyPage);
  const port = await listening(server, USUAL_PORT).catch(() => listening(server, ANY_PORT));
  try {
    await shell.out(dataOf(`http://${HERE}:${port}/\n`));
  } catch (error) {
    // Nobody can come to a page whose address nobody was told.
    server.close();
    throw error;
  }
  shell.err(endedLines([answers.pageServed]));
  await new Promise((done) => server.once('close', done));
}

/** The same each time where it is free: a browser keeps the last job and the printers by the address, port and all. */
const USUAL_PORT = 42673;
const ANY_PORT = 0;

const HERE = '127.0.0.1';

async function serverOf(text: Buffer, otherwise: Said): Promise<Server> {
  const { createServer } = await import('node:http');
  return createServer(({ url, method, headers, socket }, response) => {
    // A name that leads here by another's doing would let that other's pages read this one.
    const asked = headers.host === `${HERE}:${socket.localPort}`;
    const found = asked && (method === 'GET' || method === 'HEAD') && /^\/(\?.*)?$/.test(url ?? '');
    response.writeHead(found ? 200 : asked ? 404 : 421, {
      'content-type': `text/${found ? 'html' : 'plain'}; charset=utf-8`,
      'cache-control': 'no-store',
      'content-security-policy': "frame-ancestors 'none'",
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
    });
    response.end(found ? text : endedLines([otherwise]));
  });
}

/** Only this machine can reach it. Gives the port. */
function listening(server: Server, port: number): Promise<number> {
  return new Promise((done, failed) => {
    server.once('error', failed);
    server.listen(port, HERE, () => {
      server.off('error', failed);
      const at = server.address();
      done(typeof at === 'object' && at ? at.port : port);
    });
  });
}
