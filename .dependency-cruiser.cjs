/** Data runs one way: the rooms of src/ in the order of the flow. None imports from its right. */
const FLOW = 'measure draw space words job frame saddle fit together leaf tiler ink'.split(' ');
/** What stands on top of the flow, and what each of these may not import. */
const ON_TOP = {
  nest: [...FLOW.slice(1), 'shop', 'cli', 'page', 'build'],
  shop: ['cli', 'page', 'build'],
  cli: ['page', 'build'],
  page: ['cli', 'build'],
};

const inside = (rooms) => `^src/(${rooms.join('|')})/`;

const looksRight = (room, barred) => ({
  name: `${room}-looks-right`,
  severity: 'error',
  comment: `Data runs one way: ${room}/ may not import from its right.`,
  from: { path: inside([room]) },
  to: { path: inside(barred) },
});

module.exports = {
  forbidden: [
    {
      name: 'no-circles',
      severity: 'error',
      comment: 'A circle of imports has no first thing to read.',
      from: {},
      to: { circular: true },
    },
    ...FLOW.map((room, i) => looksRight(room, [...FLOW.slice(i + 1), ...Object.keys(ON_TOP), 'build'])),
    ...Object.entries(ON_TOP).map(([room, barred]) => looksRight(room, barred)),
    {
      name: 'runs-in-a-browser',
      severity: 'error',
      comment: 'Everything up to ink/ runs the same in Node and in a browser.',
      from: { path: inside([...FLOW, 'nest', 'shop', 'page']) },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'formats-stay-in-ink',
      severity: 'error',
      comment: 'Only ink/ knows PDF, SVG and DXF.',
      from: { path: '^src/', pathNot: '^src/ink/' },
      to: { path: 'node_modules/(pdf-lib|@svgdotjs)' },
    },
    {
      name: 'bundled-packages',
      severity: 'error',
      comment:
        'What is imported is bundled, so it is chosen. Kernels, rasterisers and the like are for tests.',
      from: { path: '^src/', pathNot: '^src/build/' },
      to: {
        path: 'node_modules/',
        pathNot:
          'node_modules/(@svgdotjs/svg.js|commander|fflate|ml-levenberg-marquardt|ogl|(@types/)?papaparse|pdf-lib|preact|svgdom|yaml)/',
      },
    },
    {
      name: 'tables-stay-in-lines',
      severity: 'error',
      comment: 'Only frame/lines/ knows tables.',
      from: { path: '^src/', pathNot: '^src/frame/lines/' },
      to: { path: 'node_modules/(@types/)?papaparse/' },
    },
    {
      name: 'resolvable',
      severity: 'error',
      comment: 'What is imported is there.',
      from: { path: '^src/' },
      to: { couldNotResolve: true, pathNot: 'generated' },
    },
  ],
  options: {
    tsConfig: { fileName: 'tsconfig.json' },
    tsPreCompilationDeps: true,
    doNotFollow: { path: 'node_modules' },
    enhancedResolveOptions: {
      extensions: ['.ts', '.js', '.json'],
      // Newer packages say by these, and no longer by `main`, where they begin.
      exportsFields: ['exports'],
      conditionNames: ['import', 'require', 'node', 'default'],
    },
  },
};
