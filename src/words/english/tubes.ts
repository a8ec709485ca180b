export const tubes = {};
