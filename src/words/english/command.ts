export const command = {};
