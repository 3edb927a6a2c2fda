/**
 * Walls of houses at the ends of runs, across folders: the gaps and fillers there, what is told, seen and drawn of them.
 */
export { clapped } from './clapped.ts';
