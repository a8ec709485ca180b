import { MM_PER_INCH, type Mm } from '../units.ts';
import { EN_DIAMETERS, NPS_SIZES } from './pipe.ts';

/** Metric tube: EN 10305-3, and series 2 and 3 of EN 10220. From memory. */
const METRIC: readonly Mm[] = [
  ...[
    6, 8, 10, 12, 14, 15, 16, 18, 19, 20, 22, 24, 25, 26, 28, 30, 32, 34, 35, 36, 38, 40, 42, 44.5, 45, 48,
    50,
  ],
  ...[51, 54, 55, 57, 60, 63.5, 65, 70, 73, 75, 76, 80, 82.5, 85, 89, 90, 95, 100, 101.6, 102, 108, 110, 114],
  ...[120, 127, 130, 133, 140, 141.3, 150, 152.4, 159, 160, 168, 177.8, 180, 193.7, 200, 219, 244.5],
];

const PIPE: readonly Mm[] = [...EN_DIAMETERS, ...NPS_SIZES.map(({ od }) => od.mm)];

/** What pipe and inch tube are rolled to, of which there is some in every shop; undefined where none is so near. */
export function commonDiameter(mm: Mm, within: Mm): Mm | undefined {
  const inch = Math.round((mm / MM_PER_INCH) * 8) / 8;
  const sizes = inch >= 0.5 && inch <= 4 ? [...PIPE, inch * MM_PER_INCH] : PIPE;
  return sizes.find((size) => Math.abs(size - mm) <= within);
}

/** Whether some tube or pipe is so wide: inch tube comes by eighths (common practice, no source), and under an inch by sixteenths. */
export function isDiameter(mm: Mm, within: Mm): boolean {
  const parts = mm < MM_PER_INCH ? 16 : 8;
  const inch = (Math.round((mm / MM_PER_INCH) * parts) / parts) * MM_PER_INCH;
  return [...METRIC, ...PIPE, inch].some((size) => Math.abs(size - mm) <= within);
}
