export const leaf = {};
