import type { AskedBend, AskedEnd, AskedPart } from '../asked-end.ts';
import { type Sampled, sampled } from '../section-curves.ts';
import { type Body, type BRepKernel, headerBody } from './b-rep-kernel.ts';
import { cross, type EndName, type HeaderFrame, headerFrame, type Point } from './implicit-solids.ts';

/** The curves in which a tube's surface, this far inside its outside, meets what it lands on; to be freed. */
export function sectionOf(
  kernel: BRepKernel,
  ask: AskedEnd,
  end: EndName,
  depth: number,
): readonly Sampled[] {
  const { parts } = ask;
  const reach = Math.max(...parts.map((part) => reachOf(ask, part) + Math.abs(part.shift)));
  const tube = tubeBody(kernel, ask, depth, reach);
  const headers = parts.flatMap((part) => headerBodies(kernel, part, end, reach, parts.length > 1));
  const landing = parts.length > 1 ? [fused(kernel, headers)] : headers;
  const curves = landing.flatMap((body) => kernel.section(tube, body));
  for (const body of new Set([tube, ...headers, ...landing])) body.free();
  return sampled(curves);
}

function fused(kernel: BRepKernel, [first, ...others]: readonly Body[]): Body {
  if (!first) throw new Error('there is a header to fuse');
  return others.reduce((one, other) => {
    const both = kernel.fuse(one, other);
    if (one !== first) one.free();
    return both;
  }, first);
}

function reachOf({ tube }: AskedEnd, { header, angle, offset }: AskedPart): number {
  const half = tube.kind === 'round' ? tube.radius : Math.hypot(tube.wide, tube.deep) / 2;
  const sizes = { plate: 0, mitre: 0, round: 1, box: 1, bend: 1 };
  const size = header.kind === 'box' ? Math.hypot(header.wide, header.deep) / 2 : sizes[header.kind];
  const radius = header.kind === 'round' || header.kind === 'bend' ? header.radius : size;
  const bend = header.kind === 'bend' ? header.bendRadius : 0;
  // Longer bodies take the kernel's memory.
  return 1.3 * ((radius + bend + half + Math.abs(offset)) / Math.sin(angle) + half);
}

function tubeBody(kernel: BRepKernel, { tube }: AskedEnd, depth: number, reach: number): Body {
  const start: Point = [0, 0, -reach];
  if (tube.kind === 'round') return kernel.cylinder(start, [0, 0, 1], tube.radius - depth, 2 * reach);
  return kernel.bar(start, [0, 0, 1], [0, 1, 0], narrowed(tube, depth), 2 * reach);
}

function headerBodies(
  kernel: BRepKernel,
  { header, shift, ...place }: AskedPart,
  end: EndName,
  reach: number,
  solid: boolean,
): readonly Body[] {
  const unmoved = headerFrame({ end, ...place });
  const frame = { ...unmoved, origin: mixed(unmoved.origin, 1, [0, 0, end === 'A' ? shift : -shift], 1) };
  const { origin, along, aside, up } = frame;
  switch (header.kind) {
    case 'plate':
    case 'mitre':
      if (solid) return [plateBody(kernel, frame, reach)];
      return [kernel.sheet(origin, up, 2 * reach)];
    case 'round':
      return [headerBody(kernel, frame, header.radius, 2 * reach)];
    case 'box': {
      const { roll } = header;
      const across = mixed(aside, Math.cos(roll), up, -Math.sin(roll));
      const start = mixed(origin, 1, along, -reach);
      return [kernel.bar(start, along, across, header, 2 * reach)];
    }
    case 'bend':
      return bendBodies(kernel, header, frame, reach);
  }
}

/** A plate as a block below its surface. */
function plateBody(kernel: BRepKernel, { origin, along, up }: HeaderFrame, reach: number): Body {
  return kernel.bar(
    origin,
    mixed(up, -1, up, 0),
    along,
    { wide: 4 * reach, deep: 4 * reach, corner: 0 },
    2 * reach,
  );
}

function bendBodies(
  kernel: BRepKernel,
  { radius, bendRadius, centre }: AskedBend,
  { origin, along, aside, up }: HeaderFrame,
  reach: number,
): readonly Body[] {
  const inwards = mixed(up, Math.cos(centre), aside, Math.sin(centre));
  const middle = mixed(origin, 1, inwards, bendRadius);
  const sides = [-1, 1].map((side) => mixed(middle, 1, along, side * bendRadius));
  return [
    kernel.halfRing(middle, cross(along, inwards), mixed(along, -1, along, 0), bendRadius, radius),
    ...sides.map((start) => kernel.cylinder(start, inwards, radius, reach)),
  ];
}

function mixed(a: Point, timesA: number, b: Point, timesB: number): Point {
  return [a[0] * timesA + b[0] * timesB, a[1] * timesA + b[1] * timesB, a[2] * timesA + b[2] * timesB];
}

interface Rectangle {
  readonly wide: number;
  readonly deep: number;
  readonly corner: number;
}

/** A rectangular tube this far inside its outside. */
export function narrowed({ wide, deep, corner }: Rectangle, depth: number): Rectangle {
  return { wide: wide - 2 * depth, deep: deep - 2 * depth, corner: corner - depth };
}
