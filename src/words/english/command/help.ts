import { say } from '../../said.ts';

const toStandardOutput = say`where to; - is standard output`;
const jobFile = say`a job file, or - for standard input`;
const papers = say`letter, A4, legal, tabloid, A3, A2, A0, arch-d, 300x400mm or roll 610mm`;
const unprintable = say`what the printer can't reach, on all four sides`;

/** What `copeleaf --help` says: of the whole, of each command, and of its options by their names. */
export const command = {
  about: say`Wrap templates for tube that is coped by hand.

Write down the tube, what each end lands on and at which angle; get leaves (wrap templates) to
print at true scale, wrap round the tube, mark and cut. Begin with one of these:

  copeleaf print --od 38.1 --wall 2.4 --onto 44.5 --angle 60   one end, straight to paper
  copeleaf starter                                             jobs to begin from
  copeleaf check my-job.yaml                                   what follows, what to watch
  copeleaf print my-job.yaml                                   all its leaves in one PDF

Print at 100 % and measure the bars on the sheet before you cut.`,
  cautions: say`
Wear eye, ear, hand and lung protection; keep fire away from what burns; zinc and plating give off
poisonous fume; vent sealed tube before welding. What carries people or loads follows local code
and is designed by those licensed and welded by those qualified for it: a paper template proves
neither strength nor weld.`,
  version: say`print the version`,
  help: say`print this help`,
  errors: say`how to report mistakes`,
  /** The flags that give one end in place of a job, by their names. */
  end: {
    job: say`${jobFile}; in its place the flags below give one end`,
    od: say`the tube's outside diameter: 38.1, 1-1/2in`,
    wall: say`the tube's wall: 2.4, .095in`,
    pipe: say`in place of --od and --wall: NPS 1-1/2 sch 40, EN 48.3 x 2.6`,
    onto: say`the header's outside diameter`,
    angle: say`between the tube and the header's axis: 60, 60deg, 60°30'`,
    offset: say`from the tube's axis to the header's, positive to the right of the heel`,
    clock: say`the clocking: the station of the heel, right of the spine`,
    edge: say`bevel (grind the inside edge back) or square (leave the face square)`,
    land: say`with bevel: the land left on feather edges`,
    from: say`with square: outside, or inside for a torch held radially`,
    root: say`a gap left for the weld, the same all round, square to the header`,
    end: say`A or B`,
    units: say`mm or in, for numbers without a unit`,
    margin: unprintable,
    paper: papers,
  },
  only: say`only the tube of this name, both its hands; write it again for more tubes`,
  seated: say`after the first cut: along the spine, from end A's edge to end B's length mark`,
  print: {
    about: say`print the leaves (wrap templates) of a job, or of one end given by flags`,
    as: say`what to make`,
    footprints: say`also the footprint of each end on its header: mark it, drill the vent inside`,
    leavesOnly: say`leave out the shop pack: cut list, order of work, stock, a ticket for each tube`,
    pack: say`also the shop pack of an end given by flags; a job file has it in any case`,
    since: say`only what is not in this PDF of the job, printed before; also says which of that no longer hold`,
    printer: say`draw for a saved printer, so that its bars read true`,
    out: say`${toStandardOutput} (default: the job's name, in this folder)`,
  },
  ordinates: {
    about: say`print the setbacks at equal stations, to lay out with tape and marker`,
    every: say`from station to station (default: 15deg, or 10mm round a rectangular tube)`,
    as: say`how to write them`,
    out: toStandardOutput,
  },
  check: {
    about: say`say what was understood, what follows and what to watch; writes no file`,
    as: say`how to say it`,
    strict: say`exit with 2 if there is a warning`,
  },
  cutlist: {
    about: say`print what to cut: blanks, lengths, angles, and from which of the stock that the job lists`,
    job: jobFile,
    as: say`how to write it`,
    out: toStandardOutput,
  },
  frame: {
    about: say`write a frame file from the lines of a table (CSV) or a drawing (DXF)`,
    file: say`a CSV with a first row of name,x1,y1,z1,x2,y2,z2,od,wall; or a DXF with lines; or, with --tube, a frame file; - for standard input`,
    units: say`of numbers without a unit (default: what the drawing says, or mm)`,
    up: say`the axis that points up (default: z)`,
    od: say`outside diameter of tubes that have none in the file`,
    wall: say`their wall`,
    snap: say`ends nearer than this are one point (default: 0.5mm)`,
    keepPieces: say`keep pieces in line that follow one another as tubes of their own`,
    tube: say`of a frame file: this tube as a file of its own, to print or to change alone`,
    out: say`${toStandardOutput} (default: the file's or the tube's name with .yaml, in this folder)`,
  },
  starter: {
    about: say`list the jobs to begin from, or write one into this folder`,
    name: say`which one`,
    out: toStandardOutput,
  },
  page: {
    about: say`show the page: the same tool in a browser, on this machine alone`,
    out: say`write it as one file instead; - is standard output`,
  },
  printer: {
    about: say`save what a printer makes of the bars, so that its sheets come out true`,
    add: say`save a printer, by what was measured on the bars of \`copeleaf aid ruler\``,
    newName: say`what to call it`,
    across: say`a bar named across: 99.3mm on the one of 100 mm, 3.97in on the one of 4 in, 189.1mm/190mm on another`,
    up: say`a bar named up, likewise`,
    list: say`list the saved printers and what was measured on each`,
    remove: say`forget a saved printer`,
    name: say`which one`,
  },
  aid: {
    about: say`print a measuring aid: a scale sheet, a strip for diameters, a card for a bevel`,
    which: say`ruler (bars to measure the printer by), girth (a strip that reads a diameter) or bevel (a card that reads an angle)`,
    paper: papers,
    margin: unprintable,
    thickness: say`of the paper that is wrapped round a tube (default: 0.10mm)`,
    printer: say`draw it for a saved printer`,
    out: say`${toStandardOutput} (default: the aid's name, in this folder)`,
  },
};
