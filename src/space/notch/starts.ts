import { errorOf, type Fit, type NotchSearch } from './descent.ts';
import { type Rooted, rootedOf, signedSquare } from './notch.ts';

const ACUTE = [0.4, 0.75, 1.05, 1.3, 1.5];
const BOTH_WAYS = [...ACUTE, ...ACUTE.map((angle) => Math.PI - angle)];
const CLOCKS = Array.from({ length: 16 }, (_, i) => (i * Math.PI) / 8);
const SIDES = [-0.5, 0.15, 0.4, 0.7, 1, 1.5, 2.5];

/** With the clock given all starts are angles. */
const ANGLES = Array.from({ length: 32 }, (_, i) => 0.25 + (i * 2.64) / 31);

/** Where to look from: at each angle and clock the sizes that suit the lengths best, and the likeliest `count` of these places. */
export function startsOf(search: NotchSearch, count: number): readonly Rooted[] {
  const { given } = search;
  const alike = given.offset === undefined && given.clock === undefined;
  const angles = given.clock === undefined ? (alike ? ACUTE : BOTH_WAYS) : ANGLES;
  const clocks = given.clock === undefined ? CLOCKS : [given.clock];
  const sides = sidesOf(search);
  return angles
    .flatMap((angle) =>
      clocks.map((clock) =>
        likeliest(
          search,
          sides.map((side) => ({ ...side, angle, clock })),
        ),
      ),
    )
    .sort((a, b) => a.error - b.error)
    .slice(0, count)
    .map(({ rooted }) => rooted);
}

function likeliest(search: NotchSearch, places: readonly Rooted[]): Fit {
  return places
    .map((rooted) => ({ rooted, error: errorOf(search, rooted) }))
    .reduce((best, fit) => (fit.error < best.error ? fit : best));
}

/** Headers of every size that is told apart, to either side; those of the size and the offset that are given. */
function sidesOf({ given, tubeRadius }: NotchSearch): readonly Rooted[] {
  const [angle, clock] = [0, 0];
  if (given.offset === undefined && given.radius === undefined) {
    return SIDES.flatMap((ahead) => SIDES.map((behind) => ({ angle, clock, ahead, behind })));
  }
  const offsets = given.offset === undefined ? SIDES.flatMap((side) => [side, -side]) : undefined;
  const radii = given.radius === undefined ? SIDES.map((side) => 1 + signedSquare(side)) : undefined;
  return (offsets?.map((each) => each * tubeRadius) ?? [given.offset ?? 0]).flatMap((offset) =>
    (radii?.map((each) => each * tubeRadius) ?? [given.radius ?? 0]).map((radius) =>
      rootedOf({ angle, clock, offset, radius }, tubeRadius),
    ),
  );
}
