export const file = {};
