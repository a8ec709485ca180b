import init, { type OpenCascadeInstance, type TopoDS_Shape } from 'replicad-opencascadejs';
import type { HeaderFrame, Point } from './implicit-solids.ts';

/** The B-rep kernel (OpenCascade as WebAssembly), as far as a joint of two round tubes needs it. Lengths in mm. */
export interface BRepKernel {
  /** A solid cylinder from `start`, `length` long in this direction. */
  cylinder(start: Point, direction: Point, radius: number, length: number): Body;
  /** The curves in which the surfaces of two bodies meet. */
  section(a: Body, b: Body): readonly SectionCurve[];
  /** One body with another cut off it; the boolean that a notch takes. */
  cut(from: Body, off: Body): Body;
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

/** Loads the kernel; some 0.4 s. */
export async function loadBRepKernel(): Promise<BRepKernel> {
  const kernel = await init();
  return {
    cylinder: (start, direction, radius, length) => cylinder(kernel, start, direction, radius, length),
    section: (a, b) => section(kernel, a, b),
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
