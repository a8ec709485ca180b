import { type Camera, Geometry, Mesh, type OGLRenderingContext, Renderer, Transform } from 'ogl';
import type { Mesh as Places } from '../../space/mesh.ts';
import { stood } from './eye.ts';
import { type Shading, shadingOn } from './shading.ts';

/** What is painted in one colour: triangles, each as light as it faces the light, or a line through places. */
export interface Painted {
  readonly kind: 'surface' | 'line';
  /** Three numbers for each place. */
  readonly places: Places;
  /** Red, green and blue, from 0 to 1. */
  readonly colour: readonly [number, number, number];
  /** 1 where nothing shines through. */
  readonly opacity: number;
}

/** Paints pieces on a canvas by its graphics card, until that is taken away. */
export interface Painter {
  readonly gl: OGLRenderingContext;
  /** Holds these pieces in place of those before. */
  readonly hold: (pieces: readonly Painted[]) => void;
  readonly paint: (camera: Camera) => void;
  /** Takes on the size that the canvas has in the page. */
  readonly resize: () => void;
  readonly end: () => void;
}

/** Makes a painter. Throws where there is no WebGL. */
export function painterOn(canvas: HTMLCanvasElement): Painter {
  const renderer = new Renderer({ canvas, antialias: true });
  const { gl, isWebgl2 } = renderer;
  if (!isWebgl2) throw new Error('no WebGL');
  gl.clearColor(1, 1, 1, 1);
  const shading = shadingOn(gl);
  let scene = new Transform();
  let held: readonly Mesh[] = [];
  const resize = (): void => {
    renderer.dpr = Math.min(devicePixelRatio, 2);
    renderer.setSize(canvas.clientWidth, canvas.clientHeight);
    freed(canvas);
  };
  freed(canvas);
  return {
    gl,
    hold(pieces) {
      for (const { geometry } of held) geometry.remove();
      scene = new Transform();
      held = pieces.flatMap((piece) => meshesOf(gl, shading, piece));
      for (const mesh of held) mesh.setParent(scene);
    },
    paint: (camera) => renderer.render({ scene, camera, frustumCull: false }),
    resize,
    end: () => gl.getExtension('WEBGL_lose_context')?.loseContext(),
  };
}

/** The library fixes what size it sets; in the page the style sheet has the say. */
function freed(canvas: HTMLCanvasElement): void {
  canvas.removeAttribute('style');
}

/** What shines through is painted last, what is farther off first, and the far side of each first. */
function meshesOf(
  gl: OGLRenderingContext,
  shading: Shading,
  { kind, places, colour, opacity }: Painted,
): readonly Mesh[] {
  const geometry = new Geometry(gl, { position: { size: 3, data: new Float32Array(places) } });
  geometry.computeBoundingBox();
  const { x, y, z } = geometry.bounds.center;
  // Of two in one place the later made is painted first.
  const programs = opacity < 1 ? [shading.nearSide, shading.farSide] : [shading[kind]];
  return programs.map((program) => {
    const mesh = new Mesh(gl, { geometry, program, mode: kind === 'line' ? gl.LINE_STRIP : gl.TRIANGLES });
    // The places are the scene's; this tells only how far off the mesh is.
    mesh.position.copy(stood([x, y, z]));
    mesh.onBeforeRender(() => Object.assign(program.uniforms, { colour: { value: [...colour, opacity] } }));
    return mesh;
  });
}
