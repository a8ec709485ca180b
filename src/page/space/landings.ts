import type { BendHeader } from '../../job/job.ts';
import type { HeaderShape } from '../../job/kind.ts';
import { headerFactsOf } from '../../job/kinds.ts';
import { type Axes, axesOf } from '../../leaf/picture/view.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { type Mesh, type MeshPlace, meshStrip, tubeOf } from '../../space/mesh.ts';
import { circleRing } from '../../space/outline.ts';
import type { Vector } from '../../space/vector.ts';

const ARC = 24;

/** Every header of an end as a surface in the tube's frame; `z` takes a setback there. */
export function landingsOf(cope: Cope, z: (setback: Mm) => Mm): Mesh[] {
  const { reach } = cope.joint.section;
  return cope.end.parts.map((part) => {
    // The frame of clock 0 is the tube's own.
    const axes = axesOf(part, 0);
    const shape = headerFactsOf(part.onto).shape();
    const long = 2.6 * reach + half(shape);
    return surfaceOf(shape, axes, long, ([x, y, setback]) => [x, y, z(setback)]);
  });
}

/** How far a header reaches from its axis at most; a plate lies on it. */
function half(shape: HeaderShape): Mm {
  if (shape.kind === 'bar') return Math.max(...shape.ring.map(([off, beside]) => Math.hypot(off, beside)));
  return shape.kind === 'bent' ? shape.bend.od.mm / 2 : 0;
}

type ToTube = (place: Vector) => MeshPlace;

function surfaceOf(shape: HeaderShape, axes: Axes, long: Mm, toTube: ToTube): Mesh {
  switch (shape.kind) {
    case 'bar':
      return tubeOf([-long, long].map((q) => shape.ring.map(([off, side]) => toTube(axes.at(q, off, side)))));
    case 'plane': {
      const corner = (q: Mm, side: Mm): MeshPlace => toTube(axes.at(q, 0, side));
      return meshStrip(
        [corner(-long, -long), corner(-long, long)],
        [corner(long, -long), corner(long, long)],
      );
    }
    case 'bent':
      return bend(shape.bend, axes, long, toTube);
  }
}

/** A quarter arc each way from the work point, with straight pieces beyond. */
function bend({ od, radius, centre }: BendHeader, axes: Axes, long: Mm, toTube: ToTube): Mesh {
  const ring = circleRing(od.mm / 2);
  const [towards, side] = [Math.cos(centre.rad), Math.sin(centre.rad)];
  const ringAt = (turn: number, beyond: Mm): MeshPlace[] => {
    const along = radius.mm * Math.sin(turn) + beyond * Math.cos(turn);
    const inwards = radius.mm * (1 - Math.cos(turn)) + beyond * Math.sin(turn);
    return ring.map(([a, b]) => {
      // `a` towards the bend's centre, `b` square to its plane.
      const [q, off] = [along - a * Math.sin(turn), inwards + a * Math.cos(turn)];
      return toTube(axes.at(q, off * towards - b * side, off * side + b * towards));
    });
  };
  const arcs = Array.from({ length: 2 * ARC + 1 }, (_, i) => ringAt(((i - ARC) / ARC) * (Math.PI / 2), 0));
  return tubeOf([ringAt(-Math.PI / 2, -long), ...arcs, ringAt(Math.PI / 2, long)]);
}
