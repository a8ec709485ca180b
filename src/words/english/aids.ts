export const aids = {};
