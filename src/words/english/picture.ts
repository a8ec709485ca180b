export const picture = {};
