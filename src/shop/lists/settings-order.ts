/** That one setting has to come before another, for one tube that needs its end A seated first. */
export interface Before {
  readonly earlier: string;
  readonly later: string;
}

/**
 * The settings one after another, each once those are made that it waits for; of several that wait for none, the one that
 * `rather` has first. Where all that are left wait, round in a circle, the one that stands in the most circles (it waits
 * for many, and many wait for it) is made now for the ends that can be cut, and again at the end for those that could not.
 */
export function settingsInOrder(
  settings: readonly string[],
  befores: readonly Before[],
  rather: (a: string, b: string) => number,
): readonly string[] {
  const once: string[] = [];
  const again: string[] = [];
  for (let left = [...settings].sort(rather); left.length > 0; ) {
    const open = befores.filter(
      ({ earlier, later }) => earlier !== later && left.includes(earlier) && left.includes(later),
    );
    const awaited = (setting: string): number => open.filter(({ later }) => later === setting).length;
    const awaiting = (setting: string): number => open.filter(({ earlier }) => earlier === setting).length;
    const tangle = (setting: string): number => awaited(setting) * awaiting(setting);
    const free = left.find((setting) => awaited(setting) === 0);
    const next = free ?? left.reduce((a, b) => (tangle(b) > tangle(a) ? b : a));
    if (free === undefined) again.push(next);
    once.push(next);
    left = left.filter((setting) => setting !== next);
  }
  return [...once, ...again];
}
