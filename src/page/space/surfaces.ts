import type { Mesh } from '../../space/mesh.ts';
import type { Model } from './model.ts';
import type { Painted } from './painter.ts';

const STEEL = 0xb9c4cc;
const HEADER = 0xdfe3e6;
const WASTE = 0xd9803a;
const SPINE = 0x17498f;
const CUT = 0x000000;

/** What a model looks like: what is steel, what it lands on, what is cut off. */
export function surfacesOf(model: Model): readonly Painted[] {
  return [
    ...model.headers.map((each) => piece('surface', each, HEADER, 0.55)),
    ...model.tube.map((each) => piece('surface', each, STEEL, 1)),
    ...model.waste.map((each) => piece('surface', each, WASTE, 0.7)),
    ...model.cuts.map((each) => piece('line', each.flat(), CUT, 1)),
    piece('surface', model.spine, SPINE, 1),
  ];
}

function piece(kind: Painted['kind'], places: Mesh, rgb: number, opacity: number): Painted {
  const part = (shift: number): number => ((rgb >> shift) & 255) / 255;
  return { kind, places, colour: [part(16), part(8), part(0)], opacity };
}
