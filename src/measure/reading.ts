import type { Fault } from './fault.ts';

/** What a reader gives back: the value, or what was read and why it is not taken. Readers of a person's text do not throw. */
export type Reading<Value, Why = Fault> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly read: string; readonly fault: Why };

export function taken<Value>(value: Value): { readonly ok: true; readonly value: Value } {
  return { ok: true, value };
}

export function refused<Why = Fault>(
  read: string,
  fault: Why,
): { readonly ok: false; readonly read: string; readonly fault: Why } {
  return { ok: false, read, fault };
}
