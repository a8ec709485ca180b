export const sheets = {};
