import type { Box, Mark, Point } from '../../draw/drawing.ts';
import { point } from '../../draw/path.ts';
import { type EndName, otherEnd, type Part } from '../../job/job.ts';
import { headerFactsOf } from '../../job/kinds.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import { wrapStation } from '../../space/section.ts';
import type { Language } from '../../words/language.ts';
import { sideNames, sideOfPart } from '../wrap/sides.ts';
import { headerExtent, headerLines } from './header-picture.ts';
import { visibleParts } from './hidden.ts';
import { drawn, lineOf, type Picture, type PictureLine } from './picture.ts';
import { tubeLines } from './tube-picture.ts';
import { alongHeader, axesOf, type BodyWay, fromClock, fromSide, type View } from './view.ts';

/** A picture of a joint, and the words under it that say from where it is seen. */
export interface JointView {
  readonly draw: (box: Box) => Mark[];
  readonly caption: Said;
}

/**
 * The joint to scale with itself, the tube's B direction up, so that an end's picture stands as its leaf does: from
 * its side, and from a second side where that shows what the first can't.
 */
export function viewsOf(cope: Cope, end: EndName, words: Language): readonly [JointView, ...JointView[]] {
  const k = end === 'A' ? 1 : -1;
  const { parts } = cope.end;
  const { picture } = words;
  const side: JointView = {
    draw: (box) => drawn(sidePicture(cope, end, k, words), box),
    caption: picture.seenFrom(stationTowards(cope, -Math.PI / 2, words)),
  };
  const facing = stationTowards(cope, 0, words);
  if (parts.length > 1 && parts.every((part) => isInPlane(part, parts[0]))) return [side];
  if (parts.length > 1) {
    const other = (box: Box): Mark[] => drawn(unionPicture(cope, fromClock(k), k, end, words), box);
    return [side, { draw: other, caption: picture.seenFrom(facing) }];
  }
  if (!needsSecond(parts[0])) return [side];
  return [
    side,
    { draw: (box) => drawn(endPicture(cope, parts[0], k, words), box), caption: picture.alongHeader(facing) },
  ];
}

/** Whether a header lies otherwise to the tube in the opposite hand, seen along itself. */
export function isHanded({ onto, offset }: Part): boolean {
  if (offset.mm !== 0) return true;
  if (onto.kind === 'box') return Math.abs(Math.sin(2 * onto.roll.rad)) > 1e-9;
  return onto.kind === 'bend' && Math.abs(Math.sin(onto.centre.rad)) > 1e-9;
}

/** Whether the side view shows a part as well as it shows the first one. */
function isInPlane({ clock, offset }: Part, first: Part): boolean {
  return offset.mm === 0 && Math.abs(Math.sin(clock.rad - first.clock.rad)) < 1e-9;
}

/** An offset, a box's shape and a bend out of the plane of the two axes don't show from the side. */
function needsSecond({ onto, offset }: Part): boolean {
  const shape = headerFactsOf(onto).shape();
  const shows =
    shape.kind === 'bent'
      ? Math.abs(Math.sin(shape.bend.centre.rad)) > 1e-9
      : shape.kind === 'bar' && shape.edges.length > 0;
  return offset.mm !== 0 || shows;
}

function stationTowards({ end, joint: { section } }: Cope, turned: number, { quantities }: Language): Said {
  const direction = end.parts[0].clock.rad + turned;
  if (section.stations === 'mm')
    return quantities.station(section.towards(wrapStation(direction, 2 * Math.PI)), section.stations);
  return quantities.angleToATenth(wrapStation(direction, 2 * Math.PI));
}

function bodyOf(cope: Cope): Mm {
  return Math.max(cope.throat.setback, 0) + 2.2 * cope.joint.section.reach;
}

function sidePicture(cope: Cope, end: EndName, k: BodyWay, words: Language): Picture {
  const [part, ...others] = cope.end.parts;
  const view = fromSide(k);
  if (others.length > 0) return unionPicture(cope, view, k, end, words);
  const { reach } = cope.joint.section;
  const body = bodyOf(cope);
  const tube = tubeLines(cope, part.clock.rad, view, body);
  const header = headerLines(part, axesOf(part, part.clock.rad), view, reach);
  const twin = part.onto.kind === 'mitre' ? tube.body.map((line) => mirrored(line, part, k)) : [];
  const sweep = 0.7 * Math.min(body, headerExtent(part, reach).fore);
  const toe = tube.saddle[0];
  const heel = tube.saddle.at(-1) ?? toe;
  const [right, left] = toe.x > heel.x ? [toe, heel] : [heel, toe];
  const acute = part.angle.rad <= Math.PI / 2;
  const names = sideNames(part, words);
  return {
    lines: [
      ...header.lines.flatMap((line) => visibleParts(line, tube.shape)),
      ...twin,
      ...tube.body,
      tube.saddle,
      ...(twin.length > 0 ? [] : [arc(part.angle.rad, k, sweep)]),
    ],
    axes: [...header.axes, { from: point(0, 0), to: point(0, k * body) }],
    words: [
      { text: acute ? names.heel : names.toe, at: right, way: point(1, k * 0.4) },
      { text: acute ? names.toe : names.heel, at: left, way: point(-1, k * 0.4) },
      ...(twin.length > 0 ? [] : [{ ...angleWord(part.angle.rad, k, sweep, words), rightOf: reach }]),
      ...(isOfPieces(part) ? [] : [awayWord(end, k, body, words)]),
      ...turnWord(part, k, body, words),
    ],
  };
}

/** Several headers at once, each with its number on the side where the cut meets it. */
function unionPicture(cope: Cope, view: View, k: BodyWay, end: EndName, words: Language): Picture {
  const { parts } = cope.end;
  const clock = parts[0].clock.rad;
  const { reach } = cope.joint.section;
  const body = bodyOf(cope);
  const tube = tubeLines(cope, clock, view, body);
  const headers = parts.map((part, i) => {
    const axes = axesOf(part, clock);
    const { fore, aft } = headerExtent(part, reach);
    const at = view.project(axes.at(sideOfPart(cope, i) === -1 ? -aft : fore, 0, 0));
    return {
      ...headerLines(part, axes, view, reach),
      word: { text: words.picture.number(i + 1), at, way: at },
    };
  });
  // Each header hides those after it, so that none is drawn through another.
  const shown = headers.flatMap(({ lines }, i) =>
    [tube, ...headers.slice(0, i)].reduce(
      (seen, { shape }) => (shape ? seen.flatMap((line) => visibleParts(line, shape)) : seen),
      lines,
    ),
  );
  return {
    lines: [...shown, ...tube.body, tube.saddle],
    axes: [...headers.flatMap(({ axes }) => axes), { from: point(0, 0), to: point(0, k * body) }],
    words: [...headers.map(({ word }) => word), awayWord(end, k, body, words)],
  };
}

function endPicture(cope: Cope, part: Part, k: BodyWay, { picture }: Language): Picture {
  const view = alongHeader(k, part.angle.rad);
  const clock = part.clock.rad;
  const { reach } = cope.joint.section;
  const tube = tubeLines(cope, clock, view, bodyOf(cope));
  const header = headerLines(part, axesOf(part, clock), view, reach);
  const lowest = Math.min(...header.lines.flat().map(({ y }) => k * y));
  const { offset } = part;
  return {
    lines: [...header.lines, ...tube.body],
    axes: [...header.axes, { from: point(0, 0), to: view.project([0, 0, bodyOf(cope)]) }],
    words:
      offset.mm === 0
        ? []
        : [
            {
              text: picture.offset(offset),
              fact: 'offset',
              at: point(offset.mm / 2, k * lowest),
              way: point(0, -k),
            },
          ],
  };
}

/** The other tube of a mitre is this one on the other side of the plane between them. */
function mirrored(line: PictureLine, { angle: { rad } }: Part, k: BodyWay): PictureLine {
  const [sin, cos] = [Math.sin(2 * rad), Math.cos(2 * rad)];
  return lineOf(line.map(({ x, y }) => point(-cos * x + k * sin * y, k * (sin * x + k * cos * y))));
}

type Word = Picture['words'][number];

function angleWord(angle: number, k: BodyWay, sweep: Mm, { quantities }: Language): Word {
  const way = point(Math.sin(angle / 2), k * Math.cos(angle / 2));
  return { text: quantities.angle(angle), fact: 'angle', at: point(sweep * way.x, sweep * way.y), way };
}

function awayWord(end: EndName, k: BodyWay, body: Mm, { picture }: Language): Word {
  return { text: picture.towardsEnd(otherEnd(end)), at: point(0, k * body), way: point(0, k) };
}

/** The pieces of a bend have no other end by name. */
function isOfPieces({ onto }: Part): boolean {
  return onto.kind === 'mitre' && onto.segments !== undefined;
}

function turnWord({ onto, angle: { rad } }: Part, k: BodyWay, body: Mm, { picture }: Language): Word[] {
  if (onto.kind !== 'mitre') return [];
  const way = point(Math.sin(2 * rad), k * Math.cos(2 * rad));
  const { segments, turn } = onto;
  const further = segments && (segments.pieces > 2 ? picture.nextPiece : picture.otherPiece);
  return [{ text: further ?? picture.turns(turn), at: point(body * way.x, body * way.y), way }];
}

/** A part of a circle round the work point, from the tube's body to the header's axis. */
function arc(angle: number, k: BodyWay, radius: Mm): PictureLine {
  const at = (t: number): Point => point(radius * Math.sin(t), k * radius * Math.cos(t));
  return [at(0), ...Array.from({ length: 12 }, (_, i) => at(((i + 1) * angle) / 12))];
}
