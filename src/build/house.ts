import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { dirname } from 'node:path';

/** What a stranger can take in at a glance. */
const MOST_FILES = 25;

/** What is wrong with the rooms of the house: each holds a few files, and DEVELOPERS.md says what it is for. */
function crowdedRooms(files: readonly string[]): string[] {
  const counts = new Map<string, number>();
  for (const file of files) counts.set(dirname(file), (counts.get(dirname(file)) ?? 0) + 1);
  return [...counts]
    .filter(([, count]) => count > MOST_FILES)
    .map(([room, count]) => `${room}/ holds ${count} files; ${MOST_FILES} at most`);
}

function namelessRooms(files: readonly string[], guide: string): string[] {
  const rooms = new Set(files.map((file) => dirname(file)).filter((room) => room.startsWith('src/')));
  return [...rooms]
    .filter((room) => !guide.includes(`\`${room.slice('src/'.length)}/\``))
    .map((room) => `${room}/ has no line in DEVELOPERS.md`);
}

const listed = execFileSync('git', [
  'ls-files',
  '--cached',
  '--others',
  '--exclude-standard',
  'src',
  'tests',
]);
const files = listed.toString().trim().split('\n');
const faults = [...crowdedRooms(files), ...namelessRooms(files, readFileSync('DEVELOPERS.md', 'utf8'))];
for (const fault of faults) console.error(fault);
process.exitCode = faults.length > 0 ? 1 : 0;
