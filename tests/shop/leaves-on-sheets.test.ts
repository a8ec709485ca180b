import { expect, test } from 'vitest';
import { PAPERS } from '../../src/job/paper/paper.ts';
import { textsOf } from '../leaf/collisions.ts';
import { type Counted, sheetsOf } from '../print/sheet-counts.ts';

const tube = (name: string, od: number, more = ''): string =>
  `  - { name: ${name}, od: ${od}, wall: 2, between: 600, ends: { A: { onto: { od: 60 }, angle: 60 }, B: { onto: { od: 60 }, angle: 75, clock: 30 } }${more} }\n`;

const JOB: Counted = {
  name: 'rack',
  most: 0,
  source: `copeleaf: 1\ntubes:\n${tube('stay', 30, ', pair: true')}${tube('rung', 25)}${tube('mast', 150)}${tube('prop', 40)}  - { name: rail, od: 40, wall: 2, between: 900, ends: { A: plain, B: plain } }\n`,
};

test.each(PAPERS.slice(0, 2))('a ticket tells the sheets that its leaves lie on ($name)', (paper) => {
  const sheets = [...sheetsOf(JOB, paper).sheets].map(({ placements }) =>
    placements.map(({ drawing }) => drawing),
  );
  const told = sheets
    .flat()
    .flatMap(textsOf)
    .flatMap((text) => {
      const [, ticket, on] = /^Ticket (\d) of 5 .*leaves: sheets? (.*)$/.exec(text) ?? [];
      return on === undefined ? [] : [[Number(ticket), on] as const];
    });
  const lie = ['stay', 'rung', 'mast', 'prop', 'rail'].flatMap((name, i) => {
    const on = sheets.flatMap((drawings, k) =>
      drawings.some(({ of }) => of?.tube === name && of.place === 'leaf') ? [k + 1] : [],
    );
    const said = on.length > 2 ? `${on[0]} to ${on.at(-1)}` : on.join(', ');
    return on.length === 0 ? [] : [[i + 1, said] as const];
  });
  // A plain rail has none.
  expect(lie).toHaveLength(4);
  expect(told).toEqual(lie);
});
