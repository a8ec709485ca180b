import type { Eye } from './eye.ts';

/** How much nearer a pixel of the wheel brings the eye. */
const A_PIXEL = 0.95 ** 0.01;

/** Pixels that wheels turn by which count in pixels, lines or pages. */
const WHEEL_UNITS = [1, 16, 100];

/** A notch of a wheel at most, and what fingers on a pad are worth, which browsers tell as a wheel with the control key. */
const [NOTCH, PINCH] = [100, 10];

/**
 * Moves an eye by what is done on a canvas: a pointer turns it, with the right button or a key held it moves what is seen, with the
 * middle one and by the wheel it comes nearer; two fingers do both.
 */
export function steerBy(canvas: HTMLCanvasElement, eye: Eye): void {
  const held = new Map<number, Place>();
  canvas.addEventListener('pointerdown', (event) => {
    canvas.setPointerCapture(event.pointerId);
    held.set(event.pointerId, placeOf(event));
  });
  canvas.addEventListener('pointermove', (event) => {
    const before = held.get(event.pointerId);
    if (!before) return;
    const now = placeOf(event);
    held.set(event.pointerId, now);
    const [other] = [...held].filter(([id]) => id !== event.pointerId).map(([, place]) => place);
    if (other) pinched(eye, canvas, other, before, now);
    else dragged(eye, canvas, event, now.x - before.x, now.y - before.y);
  });
  for (const end of ['pointerup', 'pointercancel'] as const)
    canvas.addEventListener(end, ({ pointerId }) => held.delete(pointerId));
  canvas.addEventListener('contextmenu', (event) => event.preventDefault());
  canvas.addEventListener('wheel', (event) => {
    event.preventDefault();
    eye.nearer(A_PIXEL ** pixelsOf(event));
  });
}

interface Place {
  readonly x: number;
  readonly y: number;
}

function placeOf({ clientX, clientY }: PointerEvent): Place {
  return { x: clientX, y: clientY };
}

function dragged(
  eye: Eye,
  { clientHeight }: HTMLCanvasElement,
  { buttons, ctrlKey, metaKey, shiftKey }: PointerEvent,
  right: number,
  down: number,
): void {
  const round = (2 * Math.PI) / clientHeight;
  const [secondary, middle] = [(buttons & 2) > 0, (buttons & 4) > 0];
  if (middle) eye.nearer(A_PIXEL ** down);
  else if (secondary !== (ctrlKey || metaKey || shiftKey))
    eye.shift(right / clientHeight, down / clientHeight);
  else eye.turn(-right * round, down * round);
}

/** One of two fingers moves: their middle goes half as far. */
function pinched(
  eye: Eye,
  { clientHeight }: HTMLCanvasElement,
  other: Place,
  before: Place,
  now: Place,
): void {
  const apart = ({ x, y }: Place): number => Math.max(1, Math.hypot(x - other.x, y - other.y));
  eye.shift((now.x - before.x) / 2 / clientHeight, (now.y - before.y) / 2 / clientHeight);
  eye.nearer(apart(now) / apart(before));
}

function pixelsOf({ deltaY, deltaMode, ctrlKey }: WheelEvent): number {
  const pixels = deltaY * (WHEEL_UNITS[deltaMode] ?? 1);
  return ctrlKey ? Math.min(Math.max(pixels * PINCH, -NOTCH), NOTCH) : pixels;
}
