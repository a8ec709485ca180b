import { strFromU8, strToU8, zlibSync } from 'fflate';
import { inflated } from '../../ink/inflated.ts';
import { MOST_OF_A_JOB } from '../../job/text/limits.ts';

const MARK = '#job=';

/** The whole job as the fragment of an address: deflated, in base64 for addresses (RFC 4648, 5). */
export function fragmentOf(text: string): string {
  const bytes = zlibSync(strToU8(text), { level: 9 });
  const signs = Array.from(bytes, (byte) => String.fromCharCode(byte)).join('');
  return MARK + btoa(signs).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '');
}

/** The job that a fragment carries; undefined where there is none, `damaged` where it can't be read or is more than any job. */
export function jobInFragment(fragment: string): string | 'damaged' | undefined {
  if (!fragment.startsWith(MARK)) return undefined;
  try {
    const signs = atob(fragment.slice(MARK.length).replaceAll('-', '+').replaceAll('_', '/'));
    const bytes = Uint8Array.from(signs, (sign) => sign.charCodeAt(0));
    const text = strFromU8(inflated(bytes, { left: MOST_OF_A_JOB }));
    return text.trim() === '' ? 'damaged' : text;
  } catch {
    return 'damaged';
  }
}
