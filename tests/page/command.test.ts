import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { asProcess, folderWith } from '../cli/run-command.ts';

const BUILT = readFileSync(new URL('../../dist/copeleaf.html', import.meta.url));
const COMMAND = fileURLToPath(new URL('../../dist/copeleaf.js', import.meta.url));

test('copeleaf page --out writes the page as it was built, and nothing to standard output', () => {
  const folder = folderWith();
  const { code, bytes } = asProcess(folder, ['page', '--out', 'copeleaf.html']);
  expect([code, `${bytes}`]).toEqual([0, '']);
  expect(readFileSync(join(folder, 'copeleaf.html')).equals(BUILT)).toBe(true);
});

test('copeleaf page prints an address of this machine alone, and the page is there', async () => {
  const server = spawn(process.execPath, [COMMAND, 'page'], { stdio: ['ignore', 'pipe', 'ignore'] });
  try {
    const [said]: unknown[] = await once(server.stdout, 'data');
    const address = String(said).trim();
    expect(address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
    const page = await fetch(address);
    expect(page.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(Buffer.from(await page.arrayBuffer()).equals(BUILT)).toBe(true);
    expect((await fetch(`${address}favicon.ico`)).status).toBe(404);
  } finally {
    server.kill();
  }
});

test('the page is one file whose content policy lets it fetch nothing', () => {
  const text = BUILT.toString('utf8');
  const policy = /http-equiv="Content-Security-Policy" content="([^"]*)"/.exec(text)?.[1] ?? '';
  expect(policy).toContain("default-src 'none'");
  expect(policy).not.toMatch(/unsafe|https?:|\*|connect-src/);
  expect(text).not.toMatch(/<(script|link|img)[^>]* (src|href)="(?!data:,)/);
});

test('the page’s file is at most 450 KB compressed, with what shows joints in space', () => {
  expect(BUILT.toString('utf8')).toMatch(/<script type="text\/plain" id="space-part">[^<]{100000}/);
  expect(gzipSync(BUILT, { level: 9 }).length).toBeLessThan(450_000);
});
