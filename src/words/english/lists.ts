export const lists = {};
