import type { EndName, Part } from '../job/job.ts';
import { halfTowards } from '../job/shape.ts';
import { degrees, type Mm } from '../measure/units.ts';
import { writeAngle } from '../measure/write.ts';
import type { Cope } from '../saddle/cope.ts';
import { homeStation } from '../saddle/peaks.ts';
import type { Box, Mark, Point } from './drawing.ts';
import { point } from './path.ts';
import { breakLine, drawn, type Picture } from './picture.ts';

/**
 * The joint from its side, to scale with itself: x towards the clock, y along the tube with its B direction up, so
 * that an end's picture stands as its leaf does. It is seen from the station a quarter turn before the clock.
 */
export function sideView(cope: Cope, end: EndName, box: Box): Mark[] {
  return drawn(sidePicture(cope, cope.end.parts[0], end), box);
}

/** The joint along the header, from the clock's side: shows the offset, which a side view can't. */
export function endView(cope: Cope, end: EndName, box: Box): Mark[] {
  return drawn(endPicture(cope, cope.end.parts[0], end), box);
}

/** `seen from station 270°`. */
export function seenFrom(cope: Cope, turnedBy: number): string {
  const { turn } = cope.joint.section;
  const station = homeStation(cope.end.parts[0].clock.rad + turnedBy, turn);
  return `seen from station ${Math.round(degrees(station) * 10) / 10}°`;
}

function sidePicture(cope: Cope, part: Part, end: EndName): Picture {
  const k = end === 'A' ? 1 : -1;
  const radius = cope.joint.section.reach;
  const header = halfTowards(part.onto);
  const [sin, cos] = [Math.sin(part.angle.rad), Math.cos(part.angle.rad)];
  const setback = (turned: number): Mm => cope.outside(part.clock.rad + turned).setback;
  const [right, left] = [setback(0), setback(Math.PI)];
  const body = Math.max(right, left) + 2.2 * radius;
  const on = (along: Mm, off: Mm): Point => point(along * sin - off * cos, k * (along * cos + off * sin));
  const saddle = Array.from({ length: 33 }, (_, i) => {
    const turned = -(i * Math.PI) / 32;
    return point(radius * Math.cos(turned), k * setback(turned));
  });
  // The header's near edge is hidden where the tube stands on it.
  const edgeAt = (x: Mm): Mm => (x + header * cos) / sin;
  const fore = Math.max(edgeAt(radius), header) + 0.7 * header;
  const aft = Math.max(-edgeAt(-radius), header) + 0.7 * header;
  const sweep = 0.7 * Math.min(body, fore);
  const lines: [Point, ...Point[]][] = [
    [on(-aft, -header), on(fore, -header)],
    [on(-aft, header), on(edgeAt(-radius), header)],
    [on(edgeAt(radius), header), on(fore, header)],
    breakLine(on(-aft, -header), on(-aft, header)),
    breakLine(on(fore, -header), on(fore, header)),
    [point(radius, k * right), point(radius, k * body)],
    [point(-radius, k * left), point(-radius, k * body)],
    breakLine(point(-radius, k * body), point(radius, k * body)),
    [saddle[0] ?? point(0, 0), ...saddle.slice(1)],
    arc(part.angle.rad, k, sweep),
  ];
  const other = end === 'A' ? 'B' : 'A';
  const acute = part.angle.rad <= Math.PI / 2;
  const bisector = part.angle.rad / 2;
  return {
    lines,
    axes: [
      { from: on(-aft, 0), to: on(fore, 0) },
      { from: point(0, 0), to: point(0, k * body) },
    ],
    words: [
      {
        text: writeAngle(part.angle.rad),
        at: point(sweep * Math.sin(bisector), k * sweep * Math.cos(bisector)),
        way: point(Math.sin(bisector), k * Math.cos(bisector)),
      },
      { text: acute ? 'heel' : 'toe', at: point(radius, k * right), way: point(1, k * 0.4) },
      { text: acute ? 'toe' : 'heel', at: point(-radius, k * left), way: point(-1, k * 0.4) },
      { text: `to ${other}`, at: point(0, k * body), way: point(0, k) },
    ],
  };
}

function endPicture(cope: Cope, part: Part, end: EndName): Picture {
  const k = end === 'A' ? 1 : -1;
  const radius = cope.joint.section.reach;
  const header = halfTowards(part.onto);
  const offset = part.offset.mm;
  const body = header + 1.6 * radius;
  const circle = Array.from({ length: 49 }, (_, i) => {
    const t = (i * Math.PI) / 24;
    return point(offset + header * Math.cos(t), header * Math.sin(t));
  });
  const foot = (x: Mm): Mm => Math.sqrt(Math.max(0, header ** 2 - (x - offset) ** 2));
  return {
    lines: [
      [circle[0] ?? point(0, 0), ...circle.slice(1)],
      [point(-radius, k * foot(-radius)), point(-radius, k * body)],
      [point(radius, k * foot(radius)), point(radius, k * body)],
      breakLine(point(-radius, k * body), point(radius, k * body)),
    ],
    axes: [
      { from: point(0, -k * header * 0.3), to: point(0, k * body) },
      { from: point(offset, -header * 0.3), to: point(offset, header * 0.3) },
      { from: point(offset - header * 0.3, 0), to: point(offset + header * 0.3, 0) },
    ],
    words: [{ text: 'offset', at: point(offset / 2, -k * header), way: point(0, -k) }],
  };
}

/** A part of a circle round the work point, from the tube's body to the header's axis. */
function arc(angle: number, k: 1 | -1, radius: Mm): [Point, ...Point[]] {
  const at = (t: number): Point => point(radius * Math.sin(t), k * radius * Math.cos(t));
  return [at(0), ...Array.from({ length: 12 }, (_, i) => at(((i + 1) * angle) / 12))];
}
