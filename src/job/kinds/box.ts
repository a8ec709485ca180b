import type { Length, Mm } from '../../measure/units.ts';
import { type BoxSize, boxProfile } from '../../space/box.ts';
import { cornersOf, rectangleRing } from '../../space/outline.ts';
import { prism } from '../../space/prism.ts';
import type { BoxHeader } from '../job.ts';
import { type HeaderFacts, type HeaderShape, keyed } from '../kind.ts';
import { mirroredAngle } from '../mirrored.ts';
import { readRectangle } from '../rectangle.ts';
import type { Fields } from '../text/fields.ts';
import { angleAt, lengthAt, NO_ANGLE } from '../text/values.ts';

export function readBox(fields: Fields): BoxHeader | undefined {
  const size = readRectangle(fields, wallOf(fields), 'header');
  const roll = fields.has('roll') ? angleAt(fields.get('roll')) : NO_ANGLE;
  return size && roll && { kind: 'box', ...size, roll };
}

function wallOf(fields: Fields): Length | undefined {
  return lengthAt(fields.get('wall'), 'positive', 'wall');
}

export function boxFacts(header: BoxHeader): HeaderFacts {
  const { wide, deep, corner, roll } = header;
  const size: BoxSize = { wide: wide.mm, deep: deep.mm, corner: corner.mm, roll: roll.rad };
  const flat = flatOf(header);
  return {
    said: ({ headers }) => headers.box(header),
    setting: `box ${keyed(wide.mm)} ${keyed(deep.mm)} ${keyed(corner.mm)}`,
    across: reachOf(size.wide, size.deep, size),
    towards: reachOf(size.deep, size.wide, size),
    ...(flat && { room: { ...flat, of: 'flat' } }),
    wall: true,
    mirrored: { ...header, roll: mirroredAngle(roll) },
    shape: () => shapeOf(size),
    solid: (angle, offset, root) => prism(boxProfile(largerBox(size, root)), angle, offset),
    filled: (angle, offset, root) =>
      prism(boxProfile({ ...largerBox(size, root), corner: 0 }), angle, offset),
  };
}

function largerBox({ wide, deep, corner, roll }: BoxSize, by: Mm): BoxSize {
  return { wide: wide + 2 * by, deep: deep + 2 * by, corner: corner + by, roll };
}

/** Half the width, along one side of it as it was before it was rolled. */
function reachOf(along: Mm, square: Mm, { corner, roll }: BoxSize): Mm {
  const core =
    (along / 2 - corner) * Math.abs(Math.cos(roll)) + (square / 2 - corner) * Math.abs(Math.sin(roll));
  return core + corner;
}

/** The flat of the face that is landed on, and that face; a box that is rolled shows no one flat. */
function flatOf({ wide, deep, corner, roll }: BoxHeader): { mm: Mm; face: Mm } | undefined {
  const quarters = roll.rad / (Math.PI / 2);
  if (Math.abs(quarters - Math.round(quarters)) > 1e-9) return undefined;
  const face = Math.round(quarters) % 2 === 0 ? wide : deep;
  return { mm: face.mm - 2 * corner.mm, face: face.mm };
}

function shapeOf(size: BoxSize): HeaderShape {
  const { wide, deep, corner } = size;
  const profile = boxProfile(size);
  const edges = cornersOf(size).map(({ middle }) => middle);
  return {
    kind: 'bar',
    ring: rectangleRing(size),
    edges,
    girth: 2 * (wide + deep) - (8 - 2 * Math.PI) * corner,
    folds: edges.map(([off, beside]) => profile.round(off, beside)),
  };
}
