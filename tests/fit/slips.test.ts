import { expect, test } from 'vitest';
import { endLines } from '../../src/fit/end-lines.ts';
import { ENGLISH } from '../../src/words/english.ts';
import { type Ask, endUnderTest, SQUARE } from './ends-under-test.ts';

// A slender cope slides far along where it leans wrongly; one that stands to the side of its header, where it shifts to the side.
test.each<[string, Ask]>([
  ['angle', { od: 60, wall: 2, onto: 70, angle: 30 }],
  ['offset', { od: 30, wall: 2, onto: 60, angle: 80, offset: 14 }],
])(
  'what an error opens is told worst first, and the worst, the %s, is to be measured twice',
  (worst, ask) => {
    const { report } = endUnderTest(ask, SQUARE);
    const said = endLines(report, 'mm', ENGLISH).join(' ');
    const { angle, clock, offset, scale } = report.sensitivity;
    const opens = [angle, clock, offset, scale].sort((a, b) => b - a).map((mm) => Math.round(mm * 10) / 10);
    expect([...said.matchAll(/(?:opens|,) ([\d.]+) mm/g)].map(([, mm]) => Number(mm))).toEqual(opens);
    expect(said).toContain(`measure the ${worst} twice`);
  },
);
