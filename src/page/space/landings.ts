import type { Part } from '../../job/job.ts';
import { type Axes, axesOf } from '../../leaf/view.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import type { Vector } from '../../space/vector.ts';
import { type Mesh, type Place, strip, tubeOf } from './mesh.ts';

const ROUND = 64;
const ARC = 24;

/** Every header of an end as a surface in the tube's frame; `z` takes a setback there. */
export function landingsOf(cope: Cope, z: (setback: Mm) => Mm): Mesh[] {
  const { reach } = cope.joint.section;
  return cope.end.parts.map((part) => {
    // The frame of clock 0 is the tube's own.
    const axes = axesOf(part, 0);
    const long = 2.6 * reach + half(part);
    return surfaceOf(part, axes, long, ([x, y, setback]) => [x, y, z(setback)]);
  });
}

function half({ onto }: Part): Mm {
  if (onto.kind === 'round' || onto.kind === 'bend') return onto.od.mm / 2;
  return onto.kind === 'box' ? Math.max(onto.wide.mm, onto.deep.mm) / 2 : 0;
}

type ToTube = (place: Vector) => Place;

function surfaceOf({ onto }: Part, axes: Axes, long: Mm, toTube: ToTube): Mesh {
  switch (onto.kind) {
    case 'round': {
      const ring = circle(onto.od.mm / 2);
      return tubeOf([-long, long].map((q) => ring.map(([off, side]) => toTube(axes.at(q, off, side)))));
    }
    case 'box': {
      const ring = rectangle(onto.deep.mm, onto.wide.mm, onto.corner.mm, onto.roll.rad);
      return tubeOf([-long, long].map((q) => ring.map(([off, side]) => toTube(axes.at(q, off, side)))));
    }
    case 'plate':
    case 'mitre': {
      const corner = (q: Mm, side: Mm): Place => toTube(axes.at(q, 0, side));
      return strip([corner(-long, -long), corner(-long, long)], [corner(long, -long), corner(long, long)]);
    }
    case 'bend':
      return bend(onto.od.mm / 2, onto.radius.mm, onto.centre.rad, axes, long, toTube);
  }
}

type OffAxis = readonly [off: Mm, beside: Mm];

function circle(radius: Mm): OffAxis[] {
  return Array.from({ length: ROUND + 1 }, (_, i) => {
    const turn = (i * 2 * Math.PI) / ROUND;
    return [radius * Math.cos(turn), radius * Math.sin(turn)];
  });
}

/** A rectangle with round corners, turned from the body's side towards w. */
function rectangle(deep: Mm, wide: Mm, corner: Mm, roll: number): OffAxis[] {
  const [sin, cos] = [Math.sin(roll), Math.cos(roll)];
  const [out, side] = [deep / 2 - corner, wide / 2 - corner];
  const ring = [0, 1, 2, 3].flatMap((quarter) => {
    const [a, b] = [quarter === 0 || quarter === 3 ? out : -out, quarter < 2 ? side : -side];
    return Array.from({ length: 7 }, (_, i): OffAxis => {
      const turn = ((quarter + i / 6) * Math.PI) / 2;
      const [off, beside] = [a + corner * Math.cos(turn), b + corner * Math.sin(turn)];
      return [off * cos - beside * sin, off * sin + beside * cos];
    });
  });
  return [...ring, ...ring.slice(0, 1)];
}

/** A quarter arc each way from the work point, with straight pieces beyond. */
function bend(radius: Mm, bendRadius: Mm, centre: number, axes: Axes, long: Mm, toTube: ToTube): Mesh {
  const ring = circle(radius);
  const [towards, side] = [Math.cos(centre), Math.sin(centre)];
  const ringAt = (turn: number, beyond: Mm): Place[] => {
    const along = bendRadius * Math.sin(turn) + beyond * Math.cos(turn);
    const inwards = bendRadius * (1 - Math.cos(turn)) + beyond * Math.sin(turn);
    return ring.map(([a, b]) => {
      // `a` towards the bend's centre, `b` square to its plane.
      const [q, off] = [along - a * Math.sin(turn), inwards + a * Math.cos(turn)];
      return toTube(axes.at(q, off * towards - b * side, off * side + b * towards));
    });
  };
  const arcs = Array.from({ length: 2 * ARC + 1 }, (_, i) => ringAt(((i - ARC) / ARC) * (Math.PI / 2), 0));
  return tubeOf([ringAt(-Math.PI / 2, -long), ...arcs, ringAt(Math.PI / 2, long)]);
}
