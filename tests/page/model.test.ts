import { describe, expect, test } from 'vitest';
import { workOut } from '../../src/page/job/outcome.ts';
import { type Model, modelOf } from '../../src/page/space/model.ts';
import { ENGLISH } from '../../src/words/english.ts';

function modelIn(job: string): Model {
  const outcome = workOut(job, ENGLISH);
  const [solution] = outcome.kind === 'read' ? outcome.solutions : [];
  if (!solution) throw new Error(`not read: ${JSON.stringify(outcome)}`);
  return modelOf(solution, ENGLISH);
}

/** A header's axis as the conventions give it, for the tube's frame: through work point + e w, along sin u + k cos z. */
function fromAxis(end: 'A' | 'B', at: { angle: number; clock: number; offset: number; between: number }) {
  const [theta, alpha] = [(at.angle * Math.PI) / 180, (at.clock * Math.PI) / 180];
  const k = end === 'A' ? 1 : -1;
  const [u, w] = [
    [Math.cos(alpha), Math.sin(alpha), 0],
    [-Math.sin(alpha), Math.cos(alpha), 0],
  ] as const;
  const h = [Math.sin(theta) * u[0], Math.sin(theta) * u[1], k * Math.cos(theta)] as const;
  return ([x, y, z]: readonly number[]): number => {
    const p = [
      (x ?? 0) - at.offset * w[0],
      (y ?? 0) - at.offset * w[1],
      (z ?? 0) - (end === 'A' ? 0 : at.between),
    ] as const;
    const along = p[0] * h[0] + p[1] * h[1] + p[2] * h[2];
    return Math.hypot(p[0] - along * h[0], p[1] - along * h[1], p[2] - along * h[2]);
  };
}

describe('a tube in space', () => {
  const model = modelIn(`copeleaf: 1
tube:
  od: 31.75
  wall: 2.4
  between: 200
  ends:
    A: { onto: { od: 44.5 }, angle: 62, clock: 20, offset: 2 }
    B: { onto: { od: 38.1 }, angle: 48, clock: 35, offset: 3 }
`);

  test('has each end’s cut on its header, by the conventions’ own frame', () => {
    const onA = fromAxis('A', { angle: 62, clock: 20, offset: 2, between: 200 });
    const onB = fromAxis('B', { angle: 48, clock: 35, offset: 3, between: 200 });
    for (const place of model.cuts[0] ?? []) expect(onA(place)).toBeCloseTo(44.5 / 2, 8);
    for (const place of model.cuts[1] ?? []) expect(onB(place)).toBeCloseTo(38.1 / 2, 8);
  });

  test('has each header’s surface round that same axis', () => {
    const onB = fromAxis('B', { angle: 48, clock: 35, offset: 3, between: 200 });
    const corners = model.headers[1] ?? [];
    expect(corners.length).toBeGreaterThan(300);
    for (let i = 0; i < corners.length; i += 3) expect(onB(corners.slice(i, i + 3))).toBeCloseTo(38.1 / 2, 8);
  });

  test('has its spine at station 0, a band as wide to both sides of it, from A towards B', () => {
    const [xs, ys, zs] = [0, 1, 2].map((axis) => model.spine.filter((_, i) => i % 3 === axis));
    expect(Math.min(...(ys ?? []))).toBeLessThan(-0.3);
    expect(Math.max(...(ys ?? []))).toBeCloseTo(-Math.min(...(ys ?? [])), 9);
    expect(Math.min(...(xs ?? []))).toBeGreaterThan(31.75 / 2);
    expect(Math.max(...(zs ?? [])) - Math.min(...(zs ?? []))).toBeGreaterThan(100);
  });
});

test('a bend in space passes through the work point along the header’s axis and keeps its radius', () => {
  const model = modelIn(`copeleaf: 1
tube:
  od: 26.9
  ends:
    A: { onto: { bend: { od: 48.3, radius: 180, centre: 180 } }, angle: 90 }
`);
  const corners = model.headers[0] ?? [];
  // Centre 180 degrees from the body: on the tube's axis, 180 mm beyond the work point; the header's axis is x.
  for (let i = 0; i < corners.length; i += 3) {
    const [x = 0, y = 0, z = 0] = corners.slice(i, i + 3);
    if (z < -180) continue;
    expect(Math.hypot(Math.hypot(x, z + 180) - 180, y)).toBeCloseTo(48.3 / 2, 8);
  }
});

test('a long tube is shown short, and says so', () => {
  const job = (between: number) => `copeleaf: 1
tube: { od: 30, between: ${between}, ends: { A: { onto: { od: 40 }, angle: 90 }, B: plain } }
`;
  expect(modelIn(job(100)).short).toBe(false);
  expect(modelIn(job(3000)).short).toBe(true);
});
