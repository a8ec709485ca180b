export const headers = {};
