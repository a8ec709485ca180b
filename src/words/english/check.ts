export const check = {};
