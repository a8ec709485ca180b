import { zlibSync } from 'fflate';
import { fragmentOf, jobInFragment } from '../../src/page/job/link.ts';
import { workOut } from '../../src/page/job/outcome.ts';
import { startOf } from '../../src/page/job/start.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { goodJob, pick, whole, written } from '../cli/malformed-draw.ts';
import { binary, damagedYaml, huge, slips } from '../cli/malformed-text.ts';
import type { Random } from '../outside/random-joints.ts';
import type { Attack, Outcome } from './attack.ts';
import { damaged } from './damage.ts';

const BOMB = zlibSync(new Uint8Array(50_000_000), { level: 9 });

/** The page's own job, which no link may take away. */
const OWN = 'copeleaf: 1\ntube: { name: my own, od: 30, ends: { A: { onto: { od: 40 }, angle: 70 } } }\n';

/** Links to the page: of good jobs, of bad ones, cut off, of bytes that are no link, and of a few that would be millions. */
export function link(random: Random): Attack {
  const [what, fragment, text] = drawn(random);
  return {
    what: `${what}, ${fragment.length} signs`,
    async run() {
      const start = startOf(jobInFragment(fragment), OWN, 'de-DE', ENGLISH);
      if (start.kept !== OWN) return { came: 'lost', fault: 'the job that was kept is lost' };
      if (start.linked) return shown(start.text, text);
      const fault =
        start.notice === undefined && fragment.startsWith('#job=') ? 'nothing is said' : undefined;
      return {
        came: 'left out',
        ...(fault !== undefined && { fault }),
        ...(start.text !== OWN && { fault: 'not its own job' }),
      };
    },
  };
}

/** A linked job is shown, with whatever mistakes; a good one as it is. */
function shown(text: string, good: string | undefined): Outcome {
  if (good !== undefined && text !== good) return { came: 'shown', fault: 'another job than was linked' };
  const { kind } = workOut(text, ENGLISH);
  return { came: kind, ...(good !== undefined && kind !== 'read' && { fault: 'a good job is refused' }) };
}

function drawn(random: Random): readonly [what: string, fragment: string, good?: string] {
  const good = written(goodJob(random), random);
  const share = random();
  if (share < 0.1) return ['a good job', fragmentOf(good), good];
  if (share < 0.4) {
    const { what, job = '' } = pick(random, [binary, damagedYaml, slips, huge])(random);
    return [what, fragmentOf(Buffer.from(job).toString('utf8'))];
  }
  if (share < 0.65)
    return ['a job with bytes anywhere', fragmentOf(damaged(Buffer.from(good), random).toString('utf8'))];
  if (share < 0.66) return ['millions of zeros', `#job=${Buffer.from(BOMB).toString('base64url')}`];
  const fragment = Buffer.from(fragmentOf(good));
  if (share < 0.8) return ['a damaged link', damaged(fragment, random).toString('latin1')];
  const bytes = damaged(zlibSync(Buffer.from(good), { level: pick(random, [0, 1, 9]) }), random);
  if (share < 0.95) return ['damaged bytes', `#job=${bytes.toString('base64url')}`];
  const noise = Buffer.from(Array.from({ length: whole(random, 0, 300) }, () => whole(random, 0, 255)));
  return ['noise', `#${pick(random, ['job=', 'Job=', 'job', ''])}${noise.toString('latin1')}`];
}
