/** How much nearer a pixel of the wheel brings the eye. */
const A_PIXEL = 0.95 ** 0.01;

/** Pixels that wheels turn by which count in pixels, lines or pages. */
const WHEEL_UNITS = [1, 16, 100];

/** A notch of a wheel at most, and what fingers on a pad are worth, which browsers tell as a wheel with the control key. */
const [NOTCH, PINCH] = [100, 10];

/**
 * Readies a canvas for a library that turns what is seen by a pointer, moves it by the right button and brings it nearer by the
 * middle one; two fingers do both. The wheel brings it as much nearer as it is turned.
 */
export function steerBy(canvas: HTMLCanvasElement, nearer: (factor: number) => void): void {
  canvas.addEventListener('pointerdown', ({ pointerId }) => canvas.setPointerCapture(pointerId));
  canvas.addEventListener('mousedown', (event) => {
    const { button, clientX, clientY, ctrlKey, metaKey, shiftKey } = event;
    if (button === 1 || !(ctrlKey || metaKey || shiftKey)) return;
    // A key held makes one button the other.
    event.stopImmediatePropagation();
    canvas.dispatchEvent(new MouseEvent('mousedown', { button: 2 - button, clientX, clientY }));
  });
  canvas.addEventListener('touchend', ({ touches }) => {
    // The finger that stays begins anew where it is.
    if (touches.length > 0) canvas.dispatchEvent(new TouchEvent('touchstart', { touches: [...touches] }));
  });
  canvas.addEventListener('wheel', (event) => {
    event.preventDefault();
    event.stopImmediatePropagation();
    nearer(A_PIXEL ** pixelsOf(event));
  });
}

function pixelsOf({ deltaY, deltaMode, ctrlKey }: WheelEvent): number {
  const pixels = deltaY * (WHEEL_UNITS[deltaMode] ?? 1);
  return ctrlKey ? Math.min(Math.max(pixels * PINCH, -NOTCH), NOTCH) : pixels;
}
