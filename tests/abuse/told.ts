import { messagesIn } from '../cli/malformed-messages.ts';
import type { BytesRun } from '../cli/run-command.ts';
import type { Outcome } from './attack.ts';

const TRACE = /\n\s+at .*[:(]\d+|node:internal|\bundefined\b|\[object |the program failed/;
const NO_NUMBER = /\b(NaN|Infinity|undefined)\b|\[object /;

/** Whether a run of the command ended as it is designed: a right result, or messages alone that a person can act on. */
export function outcomeOf({ code, bytes, err }: BytesRun, codes: readonly number[]): Outcome {
  const came = `exit ${code}`;
  if (code === null || !codes.includes(code))
    return { came, fault: `not among ${codes}: ${err.slice(0, 300)}` };
  if (TRACE.test(err)) return { came, fault: `a trace: ${err.slice(0, 300)}` };
  if (code !== 0) return refused(came, bytes, err);
  const result = bytes.subarray(0, 5).toString('latin1') === '%PDF-' ? '' : bytes.toString('utf8');
  return NO_NUMBER.test(result) ? { came, fault: `no result: ${NO_NUMBER.exec(result)}` } : { came };
}

function refused(came: string, bytes: Buffer, err: string): Outcome {
  if (bytes.length > 0) return { came, fault: 'something on standard output' };
  const messages = messagesIn(err);
  if (typeof messages === 'string') return { came, fault: messages };
  return messages.length === 0 ? { came, fault: 'no message' } : { came };
}
