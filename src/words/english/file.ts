import { say } from '../said.ts';

/** What a file says about itself. */
export const file = {
  job: say`The job these sheets were printed from`,
};
