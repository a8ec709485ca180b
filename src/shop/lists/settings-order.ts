/** That one setting has to come before another, for one tube that needs its end A seated first. */
export interface Before {
  readonly earlier: string;
  readonly later: string;
}

/** More settings in circles than this are not all tried. */
const MOST_TRIED = 14;

/**
 * The settings in an order that has each `earlier` one before its `later` one, with the fewest settings made twice. Without circles
 * each comes once. Where A before B leads round in a circle, some have to be made twice, once before all others and once
 * after: the fewest such that no circle is left without one (a least feedback vertex set, found by trying all sets of one,
 * of two, and so on; over 14 settings in circles, the busiest first). `rather` says which of two free settings comes first.
 */
export function settingsInOrder(
  settings: readonly string[],
  befores: readonly Before[],
  rather: (a: string, b: string) => number,
): readonly string[] {
  const arcs = befores.filter(({ earlier, later }) => earlier !== later);
  const circling = settings.filter((setting) => reaches(setting, setting, arcs));
  const twice = circling.length <= MOST_TRIED ? fewestTwice(circling, arcs) : busiestTwice(circling, arcs);
  const once = settings.filter((setting) => !twice.includes(setting));
  const between = arcs.filter(({ earlier, later }) => once.includes(earlier) && once.includes(later));
  const early = [...twice].sort(rather);
  return [...early, ...sorted(once, between, rather), ...early];
}

function reaches(from: string, to: string, arcs: readonly Before[]): boolean {
  const seen = new Set<string>();
  const open = [from];
  for (let at = open.pop(); at !== undefined; at = open.pop()) {
    for (const { earlier, later } of arcs) {
      if (earlier !== at || seen.has(later)) continue;
      if (later === to) return true;
      seen.add(later);
      open.push(later);
    }
  }
  return false;
}

function fewestTwice(circling: readonly string[], arcs: readonly Before[]): readonly string[] {
  for (let many = 0; many <= circling.length; many++) {
    const found = subsets(circling, many).find((twice) => !circles(without(arcs, twice)));
    if (found) return found;
  }
  return circling;
}

function busiestTwice(circling: readonly string[], arcs: readonly Before[]): readonly string[] {
  const twice: string[] = [];
  while (circles(without(arcs, twice))) {
    const left = without(arcs, twice);
    const busy = (setting: string): number =>
      left.filter(({ earlier }) => earlier === setting).length *
      left.filter(({ later }) => later === setting).length;
    const [next] = circling.filter((each) => !twice.includes(each)).sort((a, b) => busy(b) - busy(a));
    if (next === undefined) return twice;
    twice.push(next);
  }
  return twice;
}

function without(arcs: readonly Before[], settings: readonly string[]): readonly Before[] {
  return arcs.filter(({ earlier, later }) => !settings.includes(earlier) && !settings.includes(later));
}

function circles(arcs: readonly Before[]): boolean {
  return arcs.some(({ earlier }) => reaches(earlier, earlier, arcs));
}

/** All ways to choose so many. */
function subsets(all: readonly string[], many: number): readonly (readonly string[])[] {
  if (many === 0) return [[]];
  return all.flatMap((one, i) => subsets(all.slice(i + 1), many - 1).map((rest) => [one, ...rest]));
}

/** Each after all that come before it, and of those that are free the one that is rather first. */
function sorted(
  settings: readonly string[],
  arcs: readonly Before[],
  rather: (a: string, b: string) => number,
): readonly string[] {
  const left = [...settings];
  const done: string[] = [];
  while (left.length > 0) {
    const free = left.filter(
      (setting) => !arcs.some(({ earlier, later }) => later === setting && left.includes(earlier)),
    );
    const [next = left[0] ?? ''] = free.sort(rather);
    done.push(next);
    left.splice(left.indexOf(next), 1);
  }
  return done;
}
