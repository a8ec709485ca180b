export const steps = {};
