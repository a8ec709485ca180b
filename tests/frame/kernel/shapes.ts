import type { Manifold } from 'manifold-3d';
import { along, crossOf, dotOf, type Place, unitAlong } from '../ray-march.ts';
import type { Kernel } from './bars.ts';
import { joined, less, type SeenByRays, seen, shared } from './ray-spans.ts';

/** What is convex, less what is convex. */
export interface Carved {
  readonly whole: Manifold;
  readonly hollows: readonly Manifold[];
}

export const isConvex = ({ hollows }: Carved): boolean => hollows.length === 0;

/** What the kernel makes of solids and a way, here called up: its own hull, shadow and difference. */
export interface Shapes {
  /** A convex solid and all that it passes over on this way. */
  swept(solid: Manifold, way: Place): Manifold;
  /** All that lies straight over or under what is carved. */
  shaft(carved: Carved, up: Place): Manifold;
  /** What is carved and all that lies straight under it. */
  under(carved: Carved, up: Place): SeenByRays;
}

/** Further than any joint reaches twice, mm. */
const SWEEP = 600;
/** A shaft is so much wider than the shadow that it stands on, mm: on its side, of rounded numbers, nothing is left standing. */
const WIDER = 1e-6;

export function shapesIn({ Manifold }: Kernel, kept: (solid: Manifold) => Manifold): Shapes {
  const left = ({ whole, hollows }: Carved): Manifold =>
    hollows.length === 0 ? whole : kept(Manifold.difference([whole, ...hollows]));
  const swept = (solid: Manifold, way: Place): Manifold =>
    kept(Manifold.hull([solid, kept(solid.translate(along([0, 0, 0], SWEEP, way)))]));
  const shaft = (carved: Carved, up: Place): Manifold => {
    const solid = left(carved);
    const u = unitAlong(crossOf(up, Math.abs(up[0]) < 0.7 ? [1, 0, 0] : [0, 1, 0]));
    const v = crossOf(up, u);
    const lying = kept(
      solid.transform([u[0], v[0], up[0], 0, u[1], v[1], up[1], 0, u[2], v[2], up[2], 0, 0, 0, 0, 1]),
    );
    const shadow = lying.project();
    const wider = shadow.offset(WIDER);
    const upright = kept(wider.extrude(2 * SWEEP));
    shadow.delete();
    wider.delete();
    const lowest = along([0, 0, 0], dotOf(up, middleOf(solid)) - SWEEP, up);
    return kept(upright.transform([...u, 0, ...v, 0, ...up, 0, ...lowest, 1]));
  };
  const under = ({ whole, hollows }: Carved, up: Place): SeenByRays => {
    const down = along([0, 0, 0], -1, up);
    const deep = seen(swept(whole, down));
    if (hollows.length === 0) return deep;
    // Of what lies over or beside some hollows, and under or beside the others, no line has more than one stretch.
    const choices = hollows.reduce<readonly Choice[]>(
      (all, hollow) =>
        all.flatMap((choice) =>
          [true, false].map((isOver) => [...choice, { isOver, away: swept(hollow, isOver ? up : down) }]),
        ),
      [[]],
    );
    return joined(
      choices.map((choice) => {
        const over = choice.flatMap(({ isOver, away }) => (isOver ? [seen(away)] : []));
        return shared(
          less(deep, joined(over)),
          seen(shaft({ whole, hollows: choice.map(({ away }) => away) }, up)),
        );
      }),
    );
  };
  return { swept, shaft, under };
}

/** Of each hollow itself and all over it, or itself and all under it. */
type Choice = readonly { readonly isOver: boolean; readonly away: Manifold }[];

function middleOf(solid: Manifold): Place {
  const { min, max } = solid.boundingBox();
  return [(min[0] + max[0]) / 2, (min[1] + max[1]) / 2, (min[2] + max[2]) / 2];
}
