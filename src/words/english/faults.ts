export const faults = {};
