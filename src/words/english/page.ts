export const page = {};
