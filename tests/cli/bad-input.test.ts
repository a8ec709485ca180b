import { mkdirSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { copeleaf, folderWith, namesIn } from './run-command.ts';

const TUBE = 'name: bunk rung\n  od: 25.4\n  wall: 2\n';
const job = (text: string): string => `copeleaf: 1\ntube:\n  ${text}`;
const end = (text: string): string => job(`${TUBE}  ends:\n    A: ${text}\n`);

/** What a person might hand over, and a word that the message must hold besides what was read and what to write. */
const WRONG_JOBS: readonly (readonly [what: string, text: string, says: RegExp, line?: number])[] = [
  ['an empty file', '', /empty/],
  ['only a comment', '# nothing yet\n', /comment/],
  ['text that is no YAML', 'copeleaf: 1\ntube: { od: 25.4\n', /./],
  ['a list for a job', '- copeleaf\n- 1\n', /map/, 1],
  ['a decimal comma that splits a flow map', end('{ onto: { od: 44,5 }, angle: 60 }'), /comma/, 7],
  [
    'a key given twice',
    end('{ onto: { od: 44.5 }, angle: 60, angle: 50 }'),
    /twice|again|already|more than once/,
    7,
  ],
  ['an unknown key', end('{ onto: { od: 44.5 }, angel: 60 }'), /angle/, 7],
  ['an unknown version', 'copeleaf: 7\ntube: {}\n', /version/, 1],
  ['no version', 'tube: { od: 25.4 }\n', /version/],
  ['a length of zero', end('{ onto: { od: 0 }, angle: 60 }'), /./, 7],
  ['a negative length', end('{ onto: { od: -44.5 }, angle: 60 }'), /./, 7],
  ['a length that is no number', end('{ onto: { od: NaN }, angle: 60 }'), /./, 7],
  [
    'a wall thicker than the radius',
    job('od: 25.4\n  wall: 14\n  ends:\n    A: { onto: { od: 44.5 }, angle: 60 }\n'),
    /wall|radius/,
    4,
  ],
  ['an angle of 0', end('{ onto: { od: 44.5 }, angle: 0 }'), /./, 7],
  ['an angle of 180', end('{ onto: { od: 44.5 }, angle: 180deg }'), /./, 7],
  ['a header missed entirely', end('{ onto: { od: 44.5 }, angle: 60, offset: 36 }'), /miss|beside|touch/, 7],
  [
    'ends that cross',
    job(
      `${TUBE}  between: 30\n  ends:\n    A: { onto: { od: 44.5 }, angle: 60 }\n    B: { onto: { od: 44.5 }, angle: 60 }\n`,
    ),
    /cross/,
    6,
  ],
  [
    'a paper too small for its margins',
    `paper: letter\nmargin: 60\n${end('{ onto: { od: 44.5 }, angle: 60 }')}`.replace(
      /^([\s\S]*?)copeleaf: 1\n/,
      'copeleaf: 1\n$1',
    ),
    /110/,
  ],
];

describe('a job that is wrong', () => {
  for (const [what, text, says, line] of WRONG_JOBS) {
    it(`${what}: one clear message, exit 2, nothing written`, async () => {
      const folder = folderWith({ 'job.yaml': text });
      const { code, out, err } = await copeleaf(folder, ['print', 'job.yaml']);
      expect(err).toMatch(says);
      expect(err).toMatch(/job\.yaml/);
      expect(err).toMatch(/^ {2}instead {2}\S/m);
      if (line) expect(err).toMatch(new RegExp(`line ${line}\\b`));
      expect({ code, out, files: namesIn(folder) }).toEqual({ code: 2, out: '', files: ['job.yaml'] });
      expect(err).not.toMatch(/\n\s+at .*[:(]\d+|node:internal/);
    });
  }

  it('has all its mistakes told at once', async () => {
    const folder = folderWith({ 'job.yaml': end('{ onto: { od: 0 }, angle: 180, clok: 3 }') });
    const { err } = await copeleaf(folder, ['check', 'job.yaml', '--errors', 'json']);
    const { errors } = JSON.parse(err);
    expect(errors.length).toBe(3);
    for (const error of errors) {
      expect(Object.keys(error).sort()).toEqual(['code', 'column', 'file', 'instead', 'line', 'read', 'why']);
    }
  });
});

describe('a command that is wrong', () => {
  const good = { 'job.yaml': end('{ onto: { od: 44.5 }, angle: 60 }') };
  const wrong: readonly (readonly [what: string, args: readonly string[], code: number, says: RegExp])[] = [
    ['a missing file', ['print', 'no-such.yaml'], 2, /no such file/],
    ['a folder for a job', ['print', '.'], 2, /folder/],
    ['no command', [], 2, /--help/],
    ['an unknown command', ['prnt'], 2, /print/],
    ['an unknown flag', ['print', 'job.yaml', '--papper', 'A4'], 2, /--paper/],
    ['neither a job nor flags', ['print'], 2, /--od/],
    ['a job and flags', ['print', 'job.yaml', '--od', '30'], 2, /either/],
    ['an unknown paper', ['print', 'job.yaml', '--paper', 'A9x'], 2, /A4/],
    ['an angle of 0 by flag', ['print', '--od', '25.4', '--onto', '40', '--angle', '0'], 2, /--angle 0/],
    ['a step that does not go into a turn', ['ordinates', 'job.yaml', '--every', '7deg'], 2, /360/],
    ['an existing folder for --out', ['print', 'job.yaml', '--out', 'there'], 2, /folder/],
    ['a folder that is not there for --out', ['print', 'job.yaml', '--out', 'gone/leaf.pdf'], 2, /folder/],
    ['a full disk', ['print', 'job.yaml', '--out', '/dev/full'], 1, /ENOSPC/],
    ['an unknown starter', ['starter', 'brase'], 2, /brace/],
  ];
  for (const [what, args, expected, says] of wrong) {
    it(`${what}: one clear message, nothing written`, async () => {
      const folder = folderWith(good);
      mkdirSync(join(folder, 'there'));
      const { code, out, err } = await copeleaf(folder, args);
      expect(err).toMatch(says);
      expect(err).toMatch(/^ {2}instead {2}\S/m);
      expect({ code, out, files: namesIn(folder) }).toEqual({
        code: expected,
        out: '',
        files: ['job.yaml', 'there'],
      });
      expect(err).not.toMatch(/\n\s+at .*[:(]\d+|node:internal/);
    });
  }
});
