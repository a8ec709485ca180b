import type { Said } from '../../../measure/said.ts';
import { asWritten, joined, type Objection, say } from '../../said.ts';

/** Where a fault was found, what was read there, why it will not do, and what to write instead. */
type Placed = Objection & {
  readonly file: string;
  readonly line?: number;
  readonly column?: number;
  readonly read: Said;
};

/** As many as stand on a line. */
const MOST_NAMES = 8;

const isFolder = say`this is a folder`;
const permissions = say`see to its permissions and to the space on the disk`;

/** Why a command can't do what it was asked. */
export const commandFaults = {
  /** The block that stands on standard error. */
  block: ({ file, line, column, read, why, instead }: Placed): Said => {
    const across = column === undefined ? say`` : say`, column ${column}`;
    const where = asWritten(file);
    const place = line === undefined ? where : say`${where}, line ${line}${across}`;
    return say`${place}:
  read     ${read}
  but      ${why}
  instead  ${instead}`;
  },
  andMore: (count: number): Said => say`and ${count} more`,
  commandLine: say`command line`,
  standardInput: say`standard input`,
  standardOutput: say`standard output`,
  nothing: say`nothing`,
  /** A fault of the program itself. */
  failed: (message: string): Objection & { readonly read: Said } => ({
    read: say`what you asked for`,
    why: say`the program failed: ${asWritten(message)}`,
    instead: say`the same again will not help; please report it with the job file`,
  }),

  /** Of the command that was meant, or of the whole. */
  seeHelp: (command: string): Said =>
    command === ''
      ? say`\`copeleaf --help\` and \`copeleaf print --help\` show what there is`
      : say`\`copeleaf ${asWritten(command)} --help\` shows what there is`,
  noCommand: say`no command was given`,
  unknownCommand: (name: string, near: string | undefined): Said =>
    say`unknown command '${asWritten(name)}'${near === undefined ? say`` : say` (Did you mean ${asWritten(near)}?)`}`,
  noJob: {
    read: say`neither a job nor flags`,
    why: say`there is nothing to work on`,
    instead: say`the path of a job file, or flags such as --od 38.1 --onto 44.5 --angle 60`,
  },
  jobAndFlags: (path: string): Objection => ({
    why: say`${asWritten(path)} is a job already, and a job file says what its ends are`,
    instead: say`either the job or the flags`,
  }),

  noFile: {
    why: say`there is no such file`,
    instead: say`the path of a job file, or - to read it from a pipe`,
  },
  folderForJob: { why: isFolder, instead: say`the path of one job file in it` },
  unreadable: (code: string): Objection => ({
    why: say`the file can't be read (${asWritten(code)})`,
    instead: say`see to its permissions, or copy it elsewhere`,
  }),
  folderForResult: { why: isFolder, instead: say`the name of a file, in it if you like` },
  noFolder: {
    why: say`the folder to write into does not exist`,
    instead: say`a folder that is there, or make it first`,
  },
  longPath: {
    why: say`the name is longer than the system takes`,
    instead: say`a shorter name with --out`,
  },
  unwritable: (code: string): Objection => ({
    why: say`the file can't be written (${asWritten(code)})`,
    instead: say`another folder with --out, or see to permissions and space`,
  }),

  noJobInPdf: {
    why: say`no job travels in this file`,
    instead: say`a PDF that \`copeleaf print\` wrote`,
  },
  solidsSince: {
    why: say`solids have no leaves and no marks`,
    instead: say`--since without --as stl, or --only with it`,
  },
  noLeaf: {
    read: say`only plain ends`,
    why: say`no end is coped, so there is no leaf to print`,
    instead: say`\`copeleaf check\` for the lengths to cut`,
  },
  unevenStep: say`it does not go into 360 degrees without rest`,
  tooManyStations: (most: number): Objection => ({
    why: say`that makes more than ${asWritten(most.toLocaleString('en'))} stations`,
    instead: say`a step such as 15deg, or 0.01deg at the least`,
  }),
  step: say`a step such as 15deg, 22.5deg or 10deg`,
  /** Of a tube round which stations are mm. */
  stepInMm: (tube: Said): Said => say`a step such as 15deg, or 10mm for ${tube}`,

  noTube: (near: string | undefined, names: readonly string[]): Objection => ({
    why: say`no tube has this name`,
    instead: near === undefined ? aFew(names) : asWritten(near),
  }),
  noStarter: (near: string | undefined, names: readonly string[]): Objection => ({
    why: say`there is no such starter`,
    instead: near === undefined ? listed(names) : asWritten(near),
  }),
  fileExists: {
    why: say`there is such a file, and it may hold your work`,
    instead: say`another name with --out`,
  },

  whichTube: {
    why: say`it is a job or a frame already, and no table or drawing`,
    instead: say`--tube and a name, for one tube of a frame`,
  },
  noFrame: {
    why: say`the file is no frame: each of its tubes stands on its own`,
    instead: say`a frame file, with \`frame:\` in it`,
  },
  ownInput: { why: say`it is the file that is read`, instead: say`another name with --out` },

  printerToRemove: (name: string): Said => say`printer remove ${asWritten(name)}`,
  noPrinter: (near: string | undefined, names: readonly string[]): Objection => {
    const more = names.length - MOST_NAMES;
    const first = listed(names.slice(0, MOST_NAMES));
    const some = more > 0 ? say`${first} and ${more} more` : first;
    const known = names.length > 0 ? say`one of: ${some}` : say`first \`copeleaf printer add\``;
    return {
      why: say`no printer of that name is saved`,
      instead: near === undefined ? known : say`${asWritten(near)}, if that is meant`,
    };
  },
  nameless: say`a printer needs a name`,
  longName: (most: number): Said => say`the name is longer than ${most} letters`,
  brokenName: say`the name does not stand on one line`,
  shortName: say`a few words, such as "workshop laser"`,
  printersUnreadable: (code: string): Objection => ({
    why: say`the saved printers can't be read (${asWritten(code)})`,
    instead: permissions,
  }),
  printersDamaged: {
    why: say`the file of saved printers is damaged`,
    instead: say`move the file away and add the printers again`,
  },
  printersUnwritable: (code: string): Objection => ({
    why: say`the printers can't be saved (${asWritten(code)})`,
    instead: permissions,
  }),
};

/** As many names as are read in one line. */
const A_FEW = 12;

function aFew(names: readonly string[]): Said {
  const rest = names.length - A_FEW;
  const some = listed(names.slice(0, A_FEW));
  return rest > 0 ? say`one of: ${some} and ${rest} more` : say`one of: ${some}`;
}

function listed(names: readonly string[]): Said {
  return joined(names.map(asWritten), ', ');
}
