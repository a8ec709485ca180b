import { DirectionalLight, PerspectiveCamera, Spherical, Vector3 } from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import type { MeshPlace } from '../../space/mesh.ts';
import type { Model } from './model.ts';

/** From where a scene is seen, with a light beside it; also moved by pointer and touch. */
export interface Eye {
  readonly camera: PerspectiveCamera;
  readonly turn: (round: number, up: number) => void;
  readonly nearer: (factor: number) => void;
  readonly lookFrom: (
    way: MeshPlace,
    model: Pick<Model, 'middle' | 'reach'>,
    at: 'whole' | 'A' | 'B',
  ) => void;
  /** Sees so many times as wide as high. */
  readonly fit: (aspect: number) => void;
  readonly close: () => void;
}

/** An eye on what the canvas shows; `onMove` follows each of its moves. */
export function eyeOn(canvas: HTMLCanvasElement, onMove: () => void): Eye {
  const camera = new PerspectiveCamera(28, 1, 1, 1e5);
  camera.up.set(0, 0, 1);
  const sun = new DirectionalLight(0xffffff, 2.4);
  camera.add(sun);
  sun.position.set(0.4, 0.8, 1);
  const controls = new OrbitControls(camera, canvas);
  controls.addEventListener('change', onMove);
  const moved = (): void => {
    controls.update();
    onMove();
  };
  return {
    camera,
    turn(round, up) {
      const off = turned(camera.position.clone().sub(controls.target), round, up);
      camera.position.copy(controls.target).add(off);
      moved();
    },
    nearer(factor) {
      camera.position.sub(controls.target).divideScalar(factor).add(controls.target);
      moved();
    },
    lookFrom(way, { middle: [x, y, z], reach }, at) {
      const off = at === 'whole' ? 0 : (at === 'B' ? 1 : -1) * reach * 0.75;
      controls.target.set(x, y, z + off);
      const far = (at === 'whole' ? 5.2 : 2.2) * reach;
      camera.position.copy(controls.target).add(new Vector3(...way).setLength(far));
      moved();
    },
    fit(aspect) {
      camera.aspect = aspect;
      camera.updateProjectionMatrix();
      onMove();
    },
    close: () => controls.dispose(),
  };
}

/** Turned round the tube and up, never over its end. */
function turned(off: Vector3, round: number, up: number): Vector3 {
  // Spherical counts from the y axis; the tube stands along z.
  const around = new Spherical().setFromVector3(new Vector3(off.x, off.z, -off.y));
  around.theta += round;
  around.phi -= up;
  around.makeSafe();
  const { x, y, z } = new Vector3().setFromSpherical(around);
  return new Vector3(x, -z, y);
}
