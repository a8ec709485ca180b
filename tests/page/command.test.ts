import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { get, type IncomingMessage } from 'node:http';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { asProcess, folderWith } from '../cli/run-command.ts';

const BUILT = readFileSync(new URL('../../dist/copeleaf.html', import.meta.url));
const COMMAND = fileURLToPath(new URL('../../dist/copeleaf.js', import.meta.url));

test('copeleaf page --out writes the page as it was built, and nothing to standard output', () => {
  const folder = folderWith();
  const { code, bytes } = asProcess(folder, ['page', '--out', 'copeleaf.html']);
  expect([code, `${bytes}`]).toEqual([0, '']);
  expect(readFileSync(join(folder, 'copeleaf.html')).equals(BUILT)).toBe(true);
});

describe('copeleaf page prints an address of this machine alone', () => {
  const server = spawn(process.execPath, [COMMAND, 'page'], { stdio: ['ignore', 'pipe', 'ignore'] });
  let address: URL;

  beforeAll(async () => {
    const [said]: unknown[] = await once(server.stdout, 'data');
    expect(String(said)).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/\n$/);
    address = new URL(String(said));
  });

  afterAll(() => {
    server.kill();
  });

  test('where the page is, and nothing else', async () => {
    const page = await fetch(address);
    expect(page.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(Buffer.from(await page.arrayBuffer()).equals(BUILT)).toBe(true);
    expect((await fetch(new URL('favicon.ico', address))).status).toBe(404);
  });

  test('that answers to no other name, and may stand in no other page', async () => {
    const statusFor = async (host: string): Promise<[number | undefined, unknown]> => {
      const { hostname, port } = address;
      const [answer]: IncomingMessage[] = await once(get({ hostname, port, headers: { host } }), 'response');
      answer?.resume();
      return [answer?.statusCode, answer?.headers['content-security-policy']];
    };
    expect(await statusFor(address.host)).toEqual([200, "frame-ancestors 'none'"]);
    for (const other of [
      'workshop.test',
      `workshop.test:${address.port}`,
      address.hostname,
      `127.0.0.1:1`,
      'localhost',
    ])
      expect(await statusFor(other)).toEqual([421, "frame-ancestors 'none'"]);
  });
});

test('copeleaf page ends where nobody can be told its address', () => {
  const { status, stderr } = spawnSync(
    'sh',
    ['-c', `"$0" "$1" page > /dev/full`, process.execPath, COMMAND],
    {
      encoding: 'utf8',
    },
  );
  expect([status, stderr]).toEqual([1, expect.stringMatching(/^standard output:.*ENOSPC/s)]);
});

test('the page is one file whose content policy lets it fetch nothing', () => {
  const text = BUILT.toString('utf8');
  const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(text)?.[1] ?? '';
  expect(policy).toContain("default-src 'none'");
  expect(policy).not.toMatch(/unsafe|https?:|\*|connect-src/);
  expect(text).not.toMatch(/<(script|link|img)[^>]* (src|href)="(?!data:,)/);
});

test('the page’s file is at most 450 KB compressed, with what shows joints in space', () => {
  expect(BUILT.toString('utf8')).toContain('webgl2');
  expect(gzipSync(BUILT, { level: 9 }).length).toBeLessThan(450_000);
});
