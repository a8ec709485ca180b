import {
  BufferAttribute,
  BufferGeometry,
  DoubleSide,
  Line,
  LineBasicMaterial,
  Mesh,
  MeshLambertMaterial,
  Vector3,
} from 'three';
import type { MeshPlace, Mesh as Triangles } from '../../space/mesh.ts';
import type { Model } from './model.ts';

const STEEL = 0xb9c4cc;
const HEADER = 0xdfe3e6;
const WASTE = 0xd9803a;

/** What a model looks like: what is steel, what it lands on, what is cut off. */
export function surfacesOf(model: Model): (Mesh | Line)[] {
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

function line(places: readonly MeshPlace[], color: number): Line {
  const geometry = new BufferGeometry().setFromPoints(places.map((place) => new Vector3(...place)));
  return new Line(geometry, new LineBasicMaterial({ color, linewidth: 2 }));
}
