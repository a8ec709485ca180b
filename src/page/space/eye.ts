import { Camera, type OGLRenderingContext, Orbit, Vec3 } from 'ogl';
import type { MeshPlace } from '../../space/mesh.ts';
import type { Model } from './model.ts';
import { steerBy } from './steering.ts';

/** From where a scene is seen, and how far round; also moved by pointer, wheel and touch. */
export interface Eye {
  readonly camera: Camera;
  /** Goes round the tube and up, in radians, never over its end. */
  readonly turn: (round: number, up: number) => void;
  readonly nearer: (factor: number) => void;
  readonly lookFrom: (
    way: MeshPlace,
    model: Pick<Model, 'middle' | 'reach'>,
    at: 'whole' | 'A' | 'B',
  ) => void;
  /** Where a place was last seen: 1 is the right side of the picture and its top, -1 the left and the bottom. */
  readonly seenAt: (place: MeshPlace) => Vec3;
  readonly end: () => void;
}

/** Straight from above no side of the picture is up. */
const LEAST = 1e-6;

/** In the library's frame, whose upright axis is y; the tube stands along z. */
export function stood([x, y, z]: MeshPlace): Vec3 {
  return new Vec3(x, z, -y);
}

/** Makes an eye on what a canvas shows; `onMove` follows each of its moves. */
export function eyeOn(gl: OGLRenderingContext, canvas: HTMLCanvasElement, onMove: () => void): Eye {
  // What is nearer or farther is not seen, in mm; 28 degrees are seen in all.
  const camera = new Camera(gl, { fov: 28, near: 1, far: 1e5 });
  const lookFor = (off: Vec3): void => {
    camera.position.add(orbit.target, off);
    orbit.forcePosition();
    onMove();
  };
  const nearer = (factor: number): void => lookFor(orbit.offset.clone().divide(factor));
  // Before the library, which would take each turn of a wheel for as much.
  steerBy(canvas, nearer);
  const orbit = new Orbit(camera, {
    element: canvas,
    ...{ ease: 1, inertia: 0, rotateSpeed: 1, panSpeed: 1 },
    ...{ minPolarAngle: LEAST, maxPolarAngle: Math.PI - LEAST },
  });
  canvas.addEventListener('pointermove', ({ buttons }) => {
    // The library hears of it after this, and moves nothing by itself.
    if (buttons > 0)
      requestAnimationFrame(() => {
        orbit.update();
        onMove();
      });
  });
  return {
    camera,
    turn(by, up) {
      const { x, y, z } = orbit.offset;
      const far = Math.hypot(x, y, z);
      const fromTop = Math.min(Math.max(Math.acos(y / far) - up, LEAST), Math.PI - LEAST);
      const [round, out] = [Math.atan2(x, z) + by, far * Math.sin(fromTop)];
      lookFor(new Vec3(out * Math.sin(round), far * Math.cos(fromTop), out * Math.cos(round)));
    },
    nearer,
    lookFrom(way, { middle: [x, y, z], reach }, at) {
      const off = at === 'whole' ? 0 : (at === 'B' ? 1 : -1) * reach * 0.75;
      orbit.target.copy(stood([x, y, z + off]));
      lookFor(
        stood(way)
          .normalize()
          .multiply((at === 'whole' ? 5.2 : 2.2) * reach),
      );
    },
    seenAt(place) {
      const seen = stood(place);
      camera.project(seen);
      return seen;
    },
    end: () => orbit.remove(),
  };
}
