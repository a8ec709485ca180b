import type { Mesh } from '../../space/mesh.ts';
import { dot, type Vector } from '../../space/vector.ts';
import { prepared, type Uniforms } from './shading.ts';

/** What is painted in one colour: triangles, each as light as it faces the light, or a line through places. */
export interface Painted {
  readonly kind: 'surface' | 'line';
  /** Three numbers for each place. */
  readonly places: Mesh;
  /** Red, green and blue, from 0 to 1. */
  readonly colour: readonly [number, number, number];
  /** 1 where nothing shines through. */
  readonly opacity: number;
}

/** Paints pieces on a canvas by its graphics card. */
export interface Painter {
  /** Holds these pieces in place of those before. */
  readonly hold: (pieces: readonly Painted[]) => void;
  /** Paints them as an eye sees them; see {@link Eye} for the matrices. */
  readonly paint: (view: readonly number[], lens: readonly number[]) => void;
  readonly end: () => void;
}

/** Makes a painter; `onBack` is told when the card, which may be taken away, is there again. Throws where there is none. */
export function painterOn(canvas: HTMLCanvasElement, onBack: () => void): Painter {
  const gl = canvas.getContext('webgl2', { alpha: false, antialias: true });
  if (!gl) throw new Error('no WebGL');
  let held: readonly Held[] = [];
  let uniforms = prepared(gl);
  const hold = (pieces: readonly Painted[]): void => {
    held = heldIn(pieces);
    gl.bufferData(gl.ARRAY_BUFFER, new Float32Array(pieces.flatMap(({ places }) => places)), gl.STATIC_DRAW);
  };
  canvas.addEventListener('webglcontextlost', (event) => event.preventDefault());
  canvas.addEventListener('webglcontextrestored', () => {
    uniforms = prepared(gl);
    hold(held);
    onBack();
  });
  return {
    hold,
    paint(view, lens) {
      gl.viewport(0, 0, canvas.width, canvas.height);
      gl.uniformMatrix4fv(uniforms.view, false, view);
      gl.uniformMatrix4fv(uniforms.lens, false, lens);
      paintAll(gl, uniforms, held, view);
    },
    end: () => gl.getExtension('WEBGL_lose_context')?.loseContext(),
  };
}

/** What shines through comes last, what is farther off first and the far side of each first, and hides nothing that comes after. */
function paintAll(
  gl: WebGL2RenderingContext,
  uniforms: Uniforms,
  held: readonly Held[],
  view: readonly number[],
): void {
  const paint = ({ kind, colour, opacity, first, count }: Held): void => {
    const isLit = kind === 'surface';
    gl.uniform4f(uniforms.colour, ...colour, opacity);
    gl.uniform1i(uniforms.isLit, isLit ? 1 : 0);
    gl.drawArrays(isLit ? gl.TRIANGLES : gl.LINE_STRIP, first, count);
  };
  gl.depthMask(true);
  gl.clear(gl.COLOR_BUFFER_BIT | gl.DEPTH_BUFFER_BIT);
  gl.disable(gl.BLEND);
  gl.disable(gl.CULL_FACE);
  for (const each of held) if (each.opacity === 1) paint(each);
  gl.depthMask(false);
  gl.enable(gl.BLEND);
  gl.enable(gl.CULL_FACE);
  const [, , alongX = 0, , , , alongY = 0, , , , alongZ = 0] = view;
  const nearness = ({ middle }: Held): number => dot(middle, [alongX, alongY, alongZ]);
  const clear = held.filter(({ opacity }) => opacity < 1).sort((a, b) => nearness(a) - nearness(b));
  for (const each of clear) {
    for (const side of [gl.FRONT, gl.BACK]) {
      gl.cullFace(side);
      paint(each);
    }
  }
}

/** A piece, and where it lies in the buffer. */
interface Held extends Painted {
  readonly first: number;
  readonly count: number;
  readonly middle: Vector;
}

function heldIn(pieces: readonly Painted[]): readonly Held[] {
  let end = 0;
  return pieces.map((piece) => {
    const count = piece.places.length / 3;
    end += count;
    return { ...piece, first: end - count, count, middle: middleOf(piece.places) };
  });
}

/** The middle of the box round these places. */
function middleOf(places: Mesh): Vector {
  const middle = (axis: number): number => {
    const along = places.filter((_, i) => i % 3 === axis);
    const [low, high] = [Math.min, Math.max].map((most) => along.reduce((a, b) => most(a, b), along[0] ?? 0));
    return ((low ?? 0) + (high ?? 0)) / 2;
  };
  return [middle(0), middle(1), middle(2)];
}
