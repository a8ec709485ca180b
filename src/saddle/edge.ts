import type { Mm } from '../measure/units.ts';
import type { Line, LinePoint } from './line.ts';

/**
 * The station between `low` and `high` where the region at `low` ends. Where the line runs on evenly it is found as
 * nearly as a drawing can show; a step or a graze is found to 1e-13, which leaves less than 1e-4 mm of setback. It is
 * looked for close on both sides of where the tangents meet; where that fails, half way.
 */
export function findEdge(line: Line, low: number, high: number, region: number): number {
  let inside = low;
  let outside = high;
  let before = line(inside);
  let after = line(outside);
  let law = KINK;
  const narrow = (station: number): void => {
    if (!(station > inside && station < outside)) return;
    const point = line(station);
    if (point.region === region) [inside, before] = [station, point];
    else [outside, after] = [station, point];
  };
  while (!isEdge(before, after, outside - inside)) {
    const width = outside - inside;
    const aim = inside + aheadOf(before, after, width, law);
    const margin = width * Math.min(1 / 8, 16 * width);
    narrow(aim - margin);
    narrow(aim + margin);
    if (outside - inside > width / 2) {
      law = law === KINK ? GRAZE : KINK;
      const middle = (inside + outside) / 2;
      // Far round a large rectangular tube neighbouring numbers stand further apart than that.
      if (middle <= inside || middle >= outside) break;
      narrow(middle);
    }
  }
  return outside;
}

/** The share of the way to where the tangents of both sides meet at which the edge lies: a graze is a square root. */
const KINK = 1;
const GRAZE = 1 / 2;

/** How far ahead of the first of two points the edge between them is expected; it follows the steeper side. */
function aheadOf(before: LinePoint, after: LinePoint, width: number, law: number): number {
  const rate = before.slope - after.slope;
  if (Math.abs(rate) < LEVEL) return before.contact ? 0 : width;
  const meeting = (after.setback - after.slope * width - before.setback) / rate;
  return Math.abs(before.slope) > Math.abs(after.slope) ? law * meeting : width - law * (width - meeting);
}

function isEdge(before: LinePoint, after: LinePoint, apart: number): boolean {
  // A header touched by no more than a hair's breadth: the line runs on evenly from where it first is.
  const justTouches = before.contact !== after.contact && Math.abs(before.slope - after.slope) < LEVEL;
  return apart < SHARP_EDGE || (runsOn(before, after, apart) && (!justTouches || apart < JUST));
}

const SHARP_EDGE = 1e-13;

/** Slopes that differ by less, in mm a station, show no kink. */
const LEVEL = 1;

/** The end of such a breadth is found to this, in stations. */
const JUST = 1e-9;

/** How little a kink or a step may show, in mm, to be passed over while an edge is sought. */
const UNSEEN: Mm = 5e-5;

/** Whether two near points belong to one line whose bend between them does not show. */
function runsOn(a: LinePoint, b: LinePoint, apart: number): boolean {
  const rise = ((a.slope + b.slope) / 2) * apart;
  const bend = Math.abs(b.slope - a.slope) * apart;
  return apart < NEAR_EDGE && bend < UNSEEN && Math.abs(b.setback - a.setback - rise) < UNSEEN;
}

const NEAR_EDGE = 1e-3;
