import init, { type OpenCascadeInstance, type TopoDS_Shape } from 'replicad-opencascadejs';
import { cross, type HeaderFrame, type Point } from './implicit-solids.ts';

/** The B-rep kernel (OpenCascade as WebAssembly), as far as joints of tubes need it. Lengths in mm. */
export interface BRepKernel {
  /** A solid cylinder from `start`, `length` long in this direction. */
  cylinder(start: Point, direction: Point, radius: number, length: number): Body;
  /** A bar from `start`, `length` long along `direction`, whose section is a rectangle: `across` is the way of its `wide`. */
  bar(start: Point, direction: Point, across: Point, section: BarSection, length: number): Body;
  /** Half a ring round `centre`, from the side `first` to its opposite, turning right-handed about `axis`. */
  halfRing(centre: Point, axis: Point, first: Point, ringRadius: number, tubeRadius: number): Body;
  /** A square sheet this far from `middle` to each side. */
  sheet(middle: Point, normal: Point, half: number): Body;
  /** The curves in which the surfaces of two bodies meet. */
  section(a: Body, b: Body): readonly SectionCurve[];
  /** Two bodies as one. */
  fuse(a: Body, b: Body): Body;
  /** One body with another cut off it; the boolean that a notch takes. */
  cut(from: Body, off: Body): Body;
}

export interface BarSection {
  readonly wide: number;
  readonly deep: number;
  /** Radius of its long edges; 0 leaves them sharp. */
  readonly corner: number;
}

export interface Body {
  readonly shape: TopoDS_Shape;
  /** Gives the kernel's memory back. */
  free(): void;
}

/** A curve of the section, by its parameter from `first` to `last`. */
export interface SectionCurve {
  readonly first: number;
  readonly last: number;
  at(parameter: number): Point;
  free(): void;
}

let loading: Promise<BRepKernel> | undefined;

/** Loads the kernel, once for all files of tests that a worker runs; some 0.4 s. */
export function loadBRepKernel(): Promise<BRepKernel> {
  loading ??= init().then(kernelOf);
  return loading;
}

function kernelOf(kernel: OpenCascadeInstance): BRepKernel {
  return {
    cylinder: (start, direction, radius, length) => cylinder(kernel, start, direction, radius, length),
    bar: (start, direction, across, size, length) => bar(kernel, start, direction, across, size, length),
    halfRing: (centre, axis, first, ringRadius, tubeRadius) =>
      halfRing(kernel, centre, axis, first, ringRadius, tubeRadius),
    sheet: (middle, normal, half) => sheet(kernel, middle, normal, half),
    section: (a, b) => section(kernel, a, b),
    fuse(a, b) {
      const operation = new kernel.BRepAlgoAPI_Fuse(a.shape, b.shape);
      const body = bodyOf(operation.Shape());
      operation.delete();
      return body;
    },
    cut(from, off) {
      const operation = new kernel.BRepAlgoAPI_Cut(from.shape, off.shape);
      const body = bodyOf(operation.Shape());
      operation.delete();
      return body;
    },
  };
}

/** A round bar of this length lying along a header's axis, half of it on each side of the foot of the offset. */
export function headerBody(
  kernel: BRepKernel,
  { origin, along }: HeaderFrame,
  radius: number,
  length: number,
): Body {
  const start: Point = [
    origin[0] - (along[0] * length) / 2,
    origin[1] - (along[1] * length) / 2,
    origin[2] - (along[2] * length) / 2,
  ];
  return kernel.cylinder(start, along, radius, length);
}

function cylinder(
  kernel: OpenCascadeInstance,
  start: Point,
  direction: Point,
  radius: number,
  length: number,
): Body {
  const point = new kernel.gp_Pnt(...start);
  const axis = new kernel.gp_Dir(...direction);
  const frame = new kernel.gp_Ax2(point, axis);
  const maker = new kernel.BRepPrimAPI_MakeCylinder(frame, radius, length);
  const body = bodyOf(maker.Shape());
  for (const used of [maker, frame, axis, point]) used.delete();
  return body;
}

function bar(
  kernel: OpenCascadeInstance,
  start: Point,
  direction: Point,
  across: Point,
  { wide, deep, corner }: BarSection,
  length: number,
): Body {
  const away = cross(direction, across);
  const origin: Point = [
    start[0] - (across[0] * wide + away[0] * deep) / 2,
    start[1] - (across[1] * wide + away[1] * deep) / 2,
    start[2] - (across[2] * wide + away[2] * deep) / 2,
  ];
  const frame = axes(kernel, origin, direction, across);
  const maker = new kernel.BRepPrimAPI_MakeBox(frame, wide, deep, length);
  const sharp = bodyOf(maker.Shape());
  for (const used of [maker, frame]) used.delete();
  if (corner === 0) return sharp;
  const rounded = rounding(kernel, sharp, direction, corner);
  sharp.free();
  return rounded;
}

/** Rounds the four edges that run in this direction. */
function rounding(kernel: OpenCascadeInstance, bar: Body, direction: Point, radius: number): Body {
  const fillet = new kernel.BRepFilletAPI_MakeFillet(bar.shape);
  const explorer = new kernel.TopExp_Explorer(bar.shape, kernel.TopAbs_ShapeEnum.TopAbs_EDGE);
  const done: TopoDS_Shape[] = [];
  for (; explorer.More(); explorer.Next()) {
    const edge = kernel.TopoDS.Edge(explorer.Current());
    const curve = curveOf(new kernel.BRepAdaptor_Curve(edge));
    const [from, to] = [curve.at(curve.first), curve.at(curve.last)];
    const across = cross([to[0] - from[0], to[1] - from[1], to[2] - from[2]], direction);
    if (Math.hypot(...across) < 1e-6 && !done.some((other) => other.IsSame(edge))) {
      fillet.Add(radius, edge);
      done.push(edge);
    } else edge.delete();
    curve.free();
  }
  const body = bodyOf(fillet.Shape());
  for (const used of [...done, explorer, fillet]) used.delete();
  return body;
}

function halfRing(
  kernel: OpenCascadeInstance,
  centre: Point,
  axis: Point,
  first: Point,
  ringRadius: number,
  tubeRadius: number,
): Body {
  const frame = axes(kernel, centre, axis, first);
  const maker = new kernel.BRepPrimAPI_MakeTorus(frame, ringRadius, tubeRadius, Math.PI);
  const body = bodyOf(maker.Shape());
  for (const used of [maker, frame]) used.delete();
  return body;
}

function sheet(kernel: OpenCascadeInstance, middle: Point, normal: Point, half: number): Body {
  const point = new kernel.gp_Pnt(...middle);
  const direction = new kernel.gp_Dir(...normal);
  const plane = new kernel.gp_Pln(point, direction);
  const maker = new kernel.BRepBuilderAPI_MakeFace(plane, -half, half, -half, half);
  const body = bodyOf(maker.Shape());
  for (const used of [maker, plane, direction, point]) used.delete();
  return body;
}

type Axes = InstanceType<OpenCascadeInstance['gp_Ax2']>;

function axes(kernel: OpenCascadeInstance, origin: Point, main: Point, first: Point): Axes {
  const point = new kernel.gp_Pnt(...origin);
  const [z, x] = [new kernel.gp_Dir(...main), new kernel.gp_Dir(...first)];
  const frame = new kernel.gp_Ax2(point, z, x);
  for (const used of [x, z, point]) used.delete();
  return frame;
}

function bodyOf(shape: TopoDS_Shape): Body {
  return { shape, free: () => shape.delete() };
}

/** `Approximation(true)` puts the curve within 6e-8 mm of both surfaces; without, chords stray by 2.5e-4. */
function section(kernel: OpenCascadeInstance, a: Body, b: Body): readonly SectionCurve[] {
  const operation = new kernel.BRepAlgoAPI_Section(a.shape, b.shape, false);
  operation.Approximation(true);
  operation.Build();
  const shape = operation.Shape();
  const explorer = new kernel.TopExp_Explorer(shape, kernel.TopAbs_ShapeEnum.TopAbs_EDGE);
  const curves: SectionCurve[] = [];
  for (; explorer.More(); explorer.Next()) {
    const edge = kernel.TopoDS.Edge(explorer.Current());
    curves.push(curveOf(new kernel.BRepAdaptor_Curve(edge)));
    edge.delete();
  }
  for (const used of [explorer, shape, operation]) used.delete();
  return curves;
}

type Adaptor = InstanceType<OpenCascadeInstance['BRepAdaptor_Curve']>;

function curveOf(adaptor: Adaptor): SectionCurve {
  return {
    first: adaptor.FirstParameter(),
    last: adaptor.LastParameter(),
    at(parameter) {
      const point = adaptor.EvalD0(parameter);
      const place: Point = [point.X(), point.Y(), point.Z()];
      point.delete();
      return place;
    },
    free: () => adaptor.delete(),
  };
}
