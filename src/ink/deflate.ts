/** What deflates, as a module by itself: of a package that is loaded late by its own name, all would be bundled. */
export { zlibSync } from 'fflate';
