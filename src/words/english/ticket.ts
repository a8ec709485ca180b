export const ticket = {};
