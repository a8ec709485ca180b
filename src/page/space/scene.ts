import {
  AmbientLight,
  BufferAttribute,
  BufferGeometry,
  Color,
  DirectionalLight,
  DoubleSide,
  Line,
  LineBasicMaterial,
  Mesh,
  MeshLambertMaterial,
  PerspectiveCamera,
  Scene,
  Spherical,
  Vector3,
  WebGLRenderer,
} from 'three';
import { OrbitControls } from 'three/examples/jsm/controls/OrbitControls.js';
import type { Place, Mesh as Triangles } from './mesh.ts';
import type { Model } from './model.ts';

/** A model shown on a canvas. */
export interface Stage {
  readonly show: (model: Model) => void;
  /** Turns what is seen, in radians round the tube and up. */
  readonly turn: (round: number, up: number) => void;
  /** Comes nearer by a factor. */
  readonly nearer: (factor: number) => void;
  /** Looks from a direction at the whole, or at one end. */
  readonly lookFrom: (way: Place, at: 'whole' | 'A' | 'B') => void;
  readonly resize: () => void;
  readonly end: () => void;
}

/** Where words come to lie on the canvas, in its own pixels; hidden where they are behind the eye. */
export type PlaceWords = (
  words: readonly { readonly text: string; readonly x: number; readonly y: number }[],
) => void;

/** Sets up a scene. Throws where the browser has no WebGL. */
export function stageOn(canvas: HTMLCanvasElement, placeWords: PlaceWords): Stage {
  const renderer = new WebGLRenderer({ canvas, antialias: true });
  const scene = new Scene();
  scene.background = new Color(0xffffff);
  const camera = new PerspectiveCamera(28, 1, 1, 1e5);
  camera.up.set(0, 0, 1);
  const sun = new DirectionalLight(0xffffff, 2.4);
  camera.add(sun);
  sun.position.set(0.4, 0.8, 1);
  scene.add(camera, new AmbientLight(0xffffff, 1.3));
  const controls = new OrbitControls(camera, canvas);
  let model: Model | undefined;
  let content: (Mesh | Line)[] = [];

  const draw = (): void => {
    renderer.render(scene, camera);
    const { clientWidth, clientHeight } = canvas;
    placeWords(
      (model?.words ?? []).map(({ text, at }) => {
        const seen = new Vector3(...at).project(camera);
        return { text, x: ((seen.x + 1) / 2) * clientWidth, y: ((1 - seen.y) / 2) * clientHeight };
      }),
    );
  };
  controls.addEventListener('change', draw);

  const lookFrom = (way: Place, at: 'whole' | 'A' | 'B'): void => {
    if (!model) return;
    const [x, y, z] = model.middle;
    const off = at === 'whole' ? 0 : (at === 'B' ? 1 : -1) * model.reach * 0.75;
    controls.target.set(x, y, z + off);
    const far = (at === 'whole' ? 5.2 : 2.2) * model.reach;
    camera.position.copy(controls.target).add(new Vector3(...way).setLength(far));
    controls.update();
    draw();
  };
  return {
    lookFrom,
    show(next) {
      const first = model === undefined;
      model = next;
      scene.remove(...content);
      for (const each of content) each.geometry.dispose();
      content = contentOf(next);
      scene.add(...content);
      if (first) lookFrom([1, -0.9, 0.35], 'whole');
      else draw();
    },
    turn(round, up) {
      const off = camera.position.clone().sub(controls.target);
      // Spherical counts from the y axis; the tube stands along z.
      const around = new Spherical().setFromVector3(new Vector3(off.x, off.z, -off.y));
      around.theta += round;
      around.phi -= up;
      around.makeSafe();
      const turned = new Vector3().setFromSpherical(around);
      camera.position.copy(controls.target).add(new Vector3(turned.x, -turned.z, turned.y));
      controls.update();
      draw();
    },
    nearer(factor) {
      camera.position.sub(controls.target).divideScalar(factor).add(controls.target);
      controls.update();
      draw();
    },
    resize() {
      const { clientWidth, clientHeight } = canvas;
      renderer.setPixelRatio(Math.min(devicePixelRatio, 2));
      renderer.setSize(clientWidth, clientHeight, false);
      camera.aspect = clientWidth / Math.max(1, clientHeight);
      camera.updateProjectionMatrix();
      draw();
    },
    end() {
      controls.dispose();
      renderer.dispose();
    },
  };
}

const STEEL = 0xb9c4cc;
const HEADER = 0xdfe3e6;
const WASTE = 0xd9803a;

function contentOf(model: Model): (Mesh | Line)[] {
  return [
    ...model.headers.map((each) => surface(each, HEADER, 0.55)),
    ...model.tube.map((each) => surface(each, STEEL, 1)),
    ...model.waste.map((each) => surface(each, WASTE, 0.7)),
    ...model.cuts.map((each) => line(each, 0x000000)),
    surface(model.spine, 0x17498f, 1),
  ];
}

function surface(triangles: Triangles, color: number, opacity: number): Mesh {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(new Float32Array(triangles), 3));
  geometry.computeVertexNormals();
  const transparent = opacity < 1;
  const material = new MeshLambertMaterial({
    color,
    side: DoubleSide,
    transparent,
    opacity,
    depthWrite: !transparent,
  });
  return new Mesh(geometry, material);
}

function line(places: readonly Place[], color: number): Line {
  const geometry = new BufferGeometry().setFromPoints(places.map((place) => new Vector3(...place)));
  return new Line(geometry, new LineBasicMaterial({ color, linewidth: 2 }));
}
