import type { Point } from '../../draw/drawing.ts';
import type { Part } from '../../job/job.ts';
import { headerExtent, headerLines } from '../../leaf/picture/header-picture.ts';
import { visibleParts } from '../../leaf/picture/hidden.ts';
import type { PictureLine } from '../../leaf/picture/picture.ts';
import { tubeLines } from '../../leaf/picture/tube-picture.ts';
import { axesOf, type BodyWay, fromSide } from '../../leaf/picture/view.ts';
import type { Said } from '../../measure/said.ts';
import type { Mm } from '../../measure/units.ts';
import type { Cope } from '../../saddle/cope.ts';
import type { Language } from '../../words/language.ts';

/** The lines of one joint as seen from its side, by what they belong to; y runs down, as on a screen. */
export interface JointLines {
  readonly header: string;
  readonly axes: string;
  readonly tube: string;
  readonly saddle: string;
  /** Where the tube's sides and near edges go on from here, from its axis. */
  readonly across: readonly Mm[];
  /** The angle, from the tube's body to the header's axis, where the first header has one to show. */
  readonly arc?: {
    readonly d: string;
    readonly words: Said /** Where it meets the tube's axis. */;
    readonly at: Point;
  };
  readonly left: Mm;
  readonly right: Mm;
  readonly top: Mm;
  readonly bottom: Mm;
}

/** Draws one joint to scale, the tube's B direction up. Lengths in mm. */
export function jointLines(cope: Cope, end: 'A' | 'B', words: Language): JointLines {
  const k: BodyWay = end === 'A' ? 1 : -1;
  const view = fromSide(k);
  const { parts } = cope.end;
  const [first] = parts;
  const clock = first.clock.rad;
  const { reach } = cope.joint.section;
  const body = Math.max(cope.throat.setback, 0) + 1.6 * reach;
  const tube = tubeLines(cope, clock, view, body);
  const headers = parts.map((part) => headerLines(part, axesOf(part, clock), view, reach));
  const shown = headers.flatMap(({ lines }) => lines).flatMap((line) => visibleParts(line, tube.shape));
  // The last line is where the tube is broken off; here it goes on.
  const sides = tube.body.slice(0, -1);
  const all = [...shown, ...sides, tube.saddle].flat();
  const arc =
    parts.length === 1
      ? arcOf(first, k, 0.75 * Math.min(body, headerExtent(first, reach).fore), words)
      : undefined;
  return {
    header: shown.map(wayOf).join(''),
    axes: headers.flatMap(({ axes }) => axes.map(({ from, to }) => wayOf([from, to]))).join(''),
    tube: sides.map(wayOf).join(''),
    saddle: wayOf(tube.saddle),
    across: sides.map(([{ x }]) => x),
    ...(arc && { arc }),
    left: Math.min(...all.map(({ x }) => x)),
    right: Math.max(...all.map(({ x }) => x)),
    top: Math.min(...all.map(({ y }) => -y)),
    bottom: Math.max(...all.map(({ y }) => -y)),
  };
}

function arcOf(
  { onto, angle: { rad } }: Part,
  k: BodyWay,
  radius: Mm,
  { quantities }: Language,
): JointLines['arc'] {
  if (onto.kind === 'mitre') return undefined;
  const at = (turn: number, far: Mm): Point => ({ x: far * Math.sin(turn), y: k * far * Math.cos(turn) });
  const points = Array.from({ length: 13 }, (_, i) => at((i * rad) / 12, radius));
  return { d: wayOf(points), words: quantities.angle(rad), at: at(0, radius) };
}

function wayOf(line: PictureLine | readonly Point[]): string {
  return line.map(({ x, y }, i) => `${i === 0 ? 'M' : 'L'}${x.toFixed(2)} ${(-y).toFixed(2)}`).join('');
}

interface JointPictureProps {
  readonly end: 'A' | 'B';
  readonly lines: JointLines;
  /** Half of what is shown across, the same for both ends, so that the tube runs through. */
  readonly half: Mm;
  /** What was understood is not what is shown here: a joint to begin from. */
  readonly ghost: boolean;
  readonly label: Said;
}

/** The picture of one end, the tube's axis in its middle. */
export function JointPicture({ end, lines, half, ghost, label }: JointPictureProps) {
  const rim = half * 0.04;
  const top = end === 'A' ? lines.top : lines.top - rim;
  const bottom = end === 'A' ? lines.bottom + rim : lines.bottom;
  const { arc } = lines;
  return (
    <svg
      class={`joint${ghost ? ' is-ghost' : ''}`}
      viewBox={`${-half} ${top} ${2 * half} ${bottom - top}`}
      role="img"
      aria-label={label}
    >
      <path class="axes" d={`${lines.axes}M0 ${top}V${bottom}`} />
      <path class="header" d={lines.header} />
      <path class="tube" d={lines.tube} />
      <path class="saddle" d={lines.saddle} />
      {arc && (
        <g class="angle">
          <path d={arc.d} />
          {!ghost && (
            <text
              x={arc.at.x}
              y={-arc.at.y}
              font-size={half * 0.13}
              text-anchor="middle"
              // In the tube, where only its axis is.
              dy={end === 'A' ? '-0.4em' : '1.15em'}
            >
              {arc.words}
            </text>
          )}
        </g>
      )}
    </svg>
  );
}

/** How much has to be shown to each side of the axis, so that no end is too tall beside its fields. */
export function halfShown(pictures: readonly JointLines[]): Mm {
  return Math.max(
    1,
    ...pictures.map(({ left, right, top, bottom }) => Math.max(-left, right, (bottom - top) / 2.3) * 1.04),
  );
}
