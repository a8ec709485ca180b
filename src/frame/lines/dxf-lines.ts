import { inMm, LONGEST_MM } from '../../measure/length.ts';
import type { Said } from '../../measure/said.ts';
import type { LengthUnit, Mm } from '../../measure/units.ts';
import { crossProduct, plusTimes, scaledBy, unitOf, type Vector } from '../../space/vector.ts';
import { asWritten } from '../../words/said.ts';
import {
  type DrawnLine,
  type DrawnLines,
  type LinesDesk,
  MOST_LINES,
  plainNumber,
  refuseLine,
  withZUp,
  writtenUnit,
} from './drawn-line.ts';
import { type DxfEntity, type DxfGroup, dxfParts } from './dxf-entities.ts';
import { safeName } from './line-names.ts';
import { sizeReader } from './line-size.ts';

/** `$INSUNITS` (AutoCAD DXF Reference, HEADER). */
const UNITS: ReadonlyMap<string, LengthUnit> = new Map([
  ['1', 'in'],
  ['2', 'ft'],
  ['4', 'mm'],
  ['5', 'cm'],
  ['6', 'm'],
]);

/** An entity of stretches: what holds for each of thousands is looked for once. */
interface Drawn {
  readonly of: DxfEntity;
  readonly layer: string;
  readonly label: Said;
}

/** A straight stretch of an entity, in the drawing's units. */
interface Stretch extends Drawn {
  readonly from: Vector;
  readonly to: Vector;
}

/** Reads the straight lines of a drawing. Throws `Refusal` with its first mistake; what it leaves out it counts and tells. */
export function linesOfDxf(source: string, desk: LinesDesk): DrawnLines {
  const { lines: words } = desk.words;
  const parts = dxfParts(source, desk);
  const units = desk.units ?? UNITS.get(parts.units ?? '');
  if (units === undefined)
    return refuseLine(desk, 0, 'units', `$INSUNITS ${parts.units ?? ''}`, words.noUnits);
  const { stretches, left } = straight(parts.entities, desk);
  if (stretches.length > MOST_LINES) refuseLine(desk, 0, 'too-large', '', words.tooManyLines(MOST_LINES));
  const sizes = layerSizes(stretches, writtenUnit(units), desk);
  const place = (drawn: Vector, of: DxfEntity): Vector => {
    const mm = withZUp(scaledBy(drawn, inMm(units)), desk.isUp);
    return mm.every((each) => Math.abs(each) <= LONGEST_MM) ? mm : refuseEntity(desk, of, words.tooFar);
  };
  const lines = stretches.map(({ of, layer, label, from, to }): DrawnLine => {
    const size = sizes.get(layer) ?? sizes.get('');
    return {
      name: layer === '0' || sizes.get(layer) !== undefined ? '' : layer,
      label,
      from: place(from, of),
      to: place(to, of),
      size: size ?? '',
    };
  });
  return { lines, told: [...leftOut(left, desk), ...sizesTold(sizes, desk)], units };
}

function straight(
  entities: readonly DxfEntity[],
  desk: LinesDesk,
): { stretches: readonly Stretch[]; left: ReadonlyMap<string, number> } {
  const stretches: Stretch[] = [];
  const left = new Map<string, number>();
  for (const [i, entity] of entities.entries()) {
    const { kind } = entity;
    const isMesh = kind === 'POLYLINE' && (flagsOf(entity) & (16 | 64)) !== 0;
    if (valueAt(entity, 67) === '1' || isMesh) left.set(kind, (left.get(kind) ?? 0) + 1);
    else if (kind === 'LINE') stretches.push(lineOf(entity, desk));
    else if (kind === 'LWPOLYLINE' || kind === 'POLYLINE') {
      const flat = kind === 'LWPOLYLINE';
      const vertices = flat ? [] : verticesFrom(entities, i + 1);
      const chained = flat ? flatPolyline(entity, desk) : polyline(entity, vertices, desk);
      for (const each of chained) stretches.push(each);
    } else if (!['VERTEX', 'SEQEND'].includes(kind)) left.set(kind, (left.get(kind) ?? 0) + 1);
  }
  return { stretches, left };
}

/** The vertices that follow a polyline, up to whatever else does. */
function verticesFrom(entities: readonly DxfEntity[], first: number): readonly DxfEntity[] {
  let end = first;
  while (entities[end]?.kind === 'VERTEX') end += 1;
  return entities.slice(first, end);
}

function lineOf(entity: DxfEntity, desk: LinesDesk): Stretch {
  const [from, to] = [10, 11].map((code) => placeOf(entity, code, desk));
  return { ...drawnOf(entity, desk), from: from ?? [0, 0, 0], to: to ?? [0, 0, 0] };
}

function drawnOf(of: DxfEntity, { words }: LinesDesk): Drawn {
  return { of, layer: layerOf(of), label: words.lines.entity(asWritten(nameOf(of)), of.line) };
}

/** One whose vertices stand in itself, each begun by its x, in a plane of its own. */
function flatPolyline(entity: DxfEntity, desk: LinesDesk): readonly Stretch[] {
  refuseBulges([entity], desk);
  const elevation = numberOf(entity, 38, desk) ?? 0;
  const places = entity.groups.flatMap((group, i): Vector[] => {
    if (group.code !== 10) return [];
    const y = entity.groups.slice(i + 1, i + 8).find(({ code }) => code === 20);
    if (!y) return refuseEntity(desk, entity, desk.words.lines.noPlace);
    return [[asNumber(group, desk), asNumber(y, desk), elevation]];
  });
  return chain(entity, inWorld(entity, places, desk), desk);
}

function polyline(entity: DxfEntity, vertices: readonly DxfEntity[], desk: LinesDesk): readonly Stretch[] {
  refuseBulges(vertices, desk);
  const flags = flagsOf(entity);
  if ((flags & (2 | 4)) !== 0) refuseEntity(desk, entity, desk.words.lines.bulge);
  const places = vertices.map((vertex) => placeOf(vertex, 10, desk));
  return chain(entity, (flags & 8) === 0 ? inWorld(entity, places, desk) : places, desk);
}

/** From each place to the next and, of one that is closed, from the last to the first. */
function chain(entity: DxfEntity, places: readonly Vector[], desk: LinesDesk): readonly Stretch[] {
  const [first] = places;
  if (!first || places.length < 2) return refuseEntity(desk, entity, desk.words.lines.noPlace);
  const ring = (flagsOf(entity) & 1) !== 0 ? [...places, first] : places;
  const drawn = drawnOf(entity, desk);
  return ring.slice(1).map((to, i) => ({ ...drawn, from: ring[i] ?? first, to }));
}

function refuseBulges(entities: readonly DxfEntity[], desk: LinesDesk): void {
  const bent = entities.find((entity) =>
    entity.groups.some((group) => group.code === 42 && asNumber(group, desk) !== 0),
  );
  if (bent) refuseEntity(desk, bent, desk.words.lines.bulge);
}

/** Nearer than this to the world's z an entity's own axes are laid along the world's y: the reference's arbitrary axis algorithm. */
const UPRIGHT = 1 / 64;

/** Places that are given in the axes of their entity, whose z is its extrusion. */
function inWorld(entity: DxfEntity, places: readonly Vector[], desk: LinesDesk): readonly Vector[] {
  const [x, y, up] = [210, 220, 230].map((code) => numberOf(entity, code, desk));
  const z = unitOf([x ?? 0, y ?? 0, up ?? 1]);
  if (!z) return refuseEntity(desk, entity, desk.words.lines.noPlace);
  const isUpright = Math.abs(z[0]) < UPRIGHT && Math.abs(z[1]) < UPRIGHT;
  const across = unitOf(crossProduct(isUpright ? [0, 1, 0] : [0, 0, 1], z)) ?? [1, 0, 0];
  const along = crossProduct(z, across);
  return places.map((place) =>
    plusTimes(plusTimes(scaledBy(across, place[0]), place[1], along), place[2], z),
  );
}

/** Sizes by layers whose names say one; under no name that of all others. */
function layerSizes(
  stretches: readonly Stretch[],
  unit: 'mm' | 'in',
  { od, wall, words }: LinesDesk,
): ReadonlyMap<string, string | undefined> {
  const sizeOf = sizeReader(unit, words);
  const read = (size: string): string | undefined => {
    const reading = sizeOf(size, wall ?? '');
    return reading.ok ? reading.value : undefined;
  };
  const layers = new Set(stretches.map(({ layer }) => layer));
  return new Map([...layers, ''].map((layer) => [layer, layer === '' ? od && read(od) : read(layer)]));
}

function sizesTold(sizes: ReadonlyMap<string, string | undefined>, { words }: LinesDesk): readonly Said[] {
  return [...sizes].flatMap(([layer, size]) =>
    layer === '' || size === undefined
      ? []
      : [words.lines.layerIsSize(asWritten(safeName(layer)), asWritten(size))],
  );
}

function leftOut(left: ReadonlyMap<string, number>, { words }: LinesDesk): readonly Said[] {
  const kinds = [...left].map(([kind, count]) => words.lines.counted(count, asWritten(safeName(kind))));
  return kinds.length > 0 ? [words.lines.leftOut(kinds, left.has('INSERT'))] : [];
}

function valueAt({ groups }: DxfEntity, code: number): string | undefined {
  return groups.find((group) => group.code === code)?.value;
}

function layerOf(entity: DxfEntity): string {
  return valueAt(entity, 8) ?? '0';
}

function flagsOf(entity: DxfEntity): number {
  return Number.parseInt(valueAt(entity, 70) ?? '0', 10) || 0;
}

/** The kind of an entity with its handle, by which the drawing's program finds it. */
function nameOf(entity: DxfEntity): string {
  return `${entity.kind} ${valueAt(entity, 5) ?? ''}`.trim();
}

function refuseEntity(desk: LinesDesk, entity: DxfEntity, objection: { why: Said; instead: Said }): never {
  return refuseLine(desk, entity.line, 'dxf', nameOf(entity), objection);
}

/** A place by its x at this code, its y ten further, and its z, which a flat drawing leaves out. */
function placeOf(entity: DxfEntity, code: number, desk: LinesDesk): Vector {
  const [x, y, z] = [code, code + 10, code + 20].map((each) => numberOf(entity, each, desk));
  if (x === undefined || y === undefined) return refuseEntity(desk, entity, desk.words.lines.noPlace);
  return [x, y, z ?? 0];
}

function numberOf(entity: DxfEntity, code: number, desk: LinesDesk): number | undefined {
  const group = entity.groups.find((each) => each.code === code);
  return group && asNumber(group, desk);
}

function asNumber({ value, line }: DxfGroup, desk: LinesDesk): Mm {
  return plainNumber(value) ?? refuseLine(desk, line, 'dxf', value, desk.words.lines.noNumber);
}
