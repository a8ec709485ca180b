export const job = {};
