/** Why something a person wrote was not taken: what was read, why not, what to write instead. */
export interface Misreading {
  readonly read: string;
  readonly why: string;
  readonly instead: string;
}

/** What a reader gives back: the value, or why there is none. Readers of a person's text do not throw. */
export type Reading<Value> =
  | { readonly ok: true; readonly value: Value }
  | ({ readonly ok: false } & Misreading);

export function taken<Value>(value: Value): Reading<Value> {
  return { ok: true, value };
}

export function refused<Value>(read: string, why: string, instead: string): Reading<Value> {
  return { ok: false, read, why, instead };
}
