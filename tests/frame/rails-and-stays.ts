import fc from 'fast-check';
import { along, crossOf, dotOf, minus, type Place, unitAlong } from './ray-march.ts';

/** A tube between two places: a rail, or a stay of which each end lands on one. */
export interface Strung {
  readonly name: string;
  readonly from: Place;
  readonly to: Place;
  readonly od?: number;
  readonly box?: { readonly wide: number; readonly deep: number };
  readonly face?: Place;
  /** The rails that its ends land on, by their places in the list. */
  readonly onto?: readonly [number, number];
}

const turnAbout = (axis: Place, angle: number, place: Place): Place => {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const across = crossOf(axis, place);
  return along(
    along([c * place[0], c * place[1], c * place[2]], s, across),
    (1 - c) * dotOf(axis, place),
    axis,
  );
};

/** A move of a whole frame: of its places, and of its directions. */
export interface Move {
  readonly place: (place: Place) => Place;
  readonly way: (way: Place) => Place;
}

export const shiftedBy = (by: Place): Move => ({ place: (each) => along(each, 1, by), way: (each) => each });
export const turnedBy = (axis: Place, angle: number): Move => {
  const turn = (each: Place): Place => turnAbout(axis, angle, each);
  return { place: turn, way: turn };
};
export const mirroredInX: Move = {
  place: ([x, y, z]) => [-x, y, z],
  way: ([x, y, z]) => [-x, y, z],
};

export function moved(tubes: readonly Strung[], { place, way }: Move): readonly Strung[] {
  return tubes.map((tube) => ({
    ...tube,
    from: place(tube.from),
    to: place(tube.to),
    ...(tube.face && { face: way(tube.face) }),
  }));
}

const share = fc.integer({ min: 0, max: 10000 }).map((n) => n / 10000);
const ODS = [33.7, 42.4, 48.3, 60.3];

/** Rails that nowhere come near one another, and stays askew between two of them whose points lie beside their axes: 3 to 40 tubes. */
export const strungFrames: fc.Arbitrary<readonly Strung[]> = fc
  .record({
    rails: fc.array(fc.record({ tilts: fc.tuple(share, share), size: fc.nat(ODS.length), face: share }), {
      minLength: 2,
      maxLength: 5,
      size: 'max',
    }),
    stays: fc.array(
      fc.record({
        from: fc.nat(),
        ats: fc.tuple(share, share),
        beside: fc.tuple(share, share, share, share),
        size: fc.nat(3),
      }),
      { minLength: 1, maxLength: 35, size: 'max' },
    ),
  })
  .map(({ rails, stays }) => {
    const strung: Strung[] = rails.map(({ tilts, size, face }, i) => {
      const place: Place = [0, 500 * i, 160 * ((i * 7) % 4)];
      const way = unitAlong([1, 0.3 * (tilts[0] - 0.5), 0.3 * (tilts[1] - 0.5)]);
      const od = ODS[size];
      const shape = od === undefined ? { box: { wide: 60, deep: 40 } } : { od };
      const looks: Place = [0, Math.cos(3 * face), Math.sin(3 * face)];
      return {
        name: `rail ${i}`,
        from: place,
        to: along(place, 1500, way),
        ...shape,
        ...(od === undefined && { face: looks }),
      };
    });
    const step = 1300 / stays.length;
    stays.forEach(({ from, ats, beside, size }, i) => {
      const one = from % (rails.length - 1);
      const [a, b] = [strung[one], strung[one + 1]];
      if (!a || !b) return;
      const at = (rail: Strung, on: number, [up, aside]: readonly [number, number]): Place => {
        const axis = unitAlong(minus(rail.to, rail.from));
        return along(
          along(along(rail.from, on, axis), 8 * (up - 0.5), [0, 0, 1]),
          8 * (aside - 0.5),
          [0, 1, 0],
        );
      };
      const lean = 300 * (ats[1] - 0.5);
      const low = 100 + step * (i + 0.5 * ats[0]);
      const high = Math.min(1450, Math.max(50, low + lean));
      strung.push({
        name: `stay ${i}`,
        from: at(a, low, [beside[0], beside[1]]),
        to: at(b, high, [beside[2], beside[3]]),
        ...(size === 3 ? { box: { wide: 25, deep: 15 } } : { od: 19 + 2.5 * size }),
        ...(size === 3 && { face: [1, 0.2, 0.5] as const }),
        onto: [one, one + 1],
      });
    });
    return strung;
  });

const numbers = (place: Place): string => `[${place.map((mm) => mm.toFixed(12)).join(', ')}]`;

/** The file of these tubes, with their places written out; `more` is what else the frame has. */
export function fileOfStrung(tubes: readonly Strung[], more: readonly string[] = []): string {
  const lines = tubes.map(({ name, from, to, od, box, face, onto }) => {
    const size = box ? `section: { wide: ${box.wide}, deep: ${box.deep}, corner: 3 }` : `od: ${od}`;
    const ends = onto
      ? `, ends: { A: { onto: [rail ${onto[0]}] }, B: { onto: [rail ${onto[1]}] } }`
      : ', ends: { A: plain, B: plain }';
    return `    - { name: ${name}, along: [${numbers(from)}, ${numbers(to)}], ${size}, wall: 1.6${face ? `, face: ${numbers(face)}` : ''}${ends} }`;
  });
  return [
    'copeleaf: 1',
    'units: mm',
    'frame:',
    '  snap: 0',
    ...more.map((each) => `  ${each}`),
    '  tubes:',
    ...lines,
    '',
  ].join('\n');
}
