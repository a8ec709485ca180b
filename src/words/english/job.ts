import { type Objection, say } from '../said.ts';

/** What a job file asks for, and what is wrong with it. */
export const job = {
  /** Why a measured length comes to no number, and what to measure instead. */
  noLength: {
    'axis-beside': (): Objection => ({
      why: say`the tube's axis passes beside a header, so there is no face to measure to along it`,
      instead: say`\`straightedge\`, along a line of the tube that meets both headers`,
    }),
    'line-beside': (): Objection => ({
      why: say`on that line the tube passes beside a header, so a straight edge meets nothing there`,
      instead: say`another station for \`at\`, whose line meets both headers`,
    }),
    'still-turns': (): Objection => ({
      why: say`end B's rotation is only marked, so what a line of the tube meets there is not known`,
      instead: say`\`faces\`, along the axis, or \`overall\``,
    }),
    'mark-beside': (): Objection => ({
      why: say`the line of the length mark passes beside the header`,
      instead: say`what was measured from work point to work point, or \`overall\``,
    }),
  },
};
