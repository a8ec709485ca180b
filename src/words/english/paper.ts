export const paper = {};
