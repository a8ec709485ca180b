export const footprint = {};
